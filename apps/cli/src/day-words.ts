/** What `sorrel day` says of its own. */
export const dayWords = {
  noSamples: 'No place of this garden is a sample that can be planned: give each its code, as in sample: {code: A017}.',
  wrote: (file: string) => `Written: ${file}`,
  planned: (count: number) => (count === 1 ? '1 sample planned.' : `${count} samples planned.`),
  counted: (count: number, text: string) => `${String(count).padStart(5)}  ${text}`,
  call: (code: string, person: string, why: string) =>
    `Call ${[code, person].filter((each) => each !== '').join(', ')}: ${why}`,
} as const;

export const dayHelp: Readonly<Record<string, string>> = {
  day: `sorrel day GARDEN [options]
sorrel day --store STORE --garden NAME [options]

Plans every sample of a soil day: the places of the garden that have a sample
with a code. Says what the plans say, and who should be called because
something looks wrong or is unsafe.

  --handouts FILE     a page or two for each person, in check-in order (PDF)
  --merge FILE        a row for each sample, for letters and mails (CSV)
  --summary FILE      the day's soils together, for the educator (PDF)
  --anonymous FILE    the samples without anything that points at a person (CSV)
  --contact TEXT      name and telephone of who hands the pages out
  --large-print       letters of 18 points
  --units metric|us   units of the amounts
  --as-of DAY         plan as if today were DAY
`,
};
