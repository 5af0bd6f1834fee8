/** Hands a text over as a file to keep. */
export const download = (name: string, type: string, text: string): void =>
  downloadBlob(name, new Blob([text], { type }));

/** The same for what is no text. */
export function downloadBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has begun to read it by then; long files are held until the page goes.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A name for a file from the name of a garden: letters and digits of any script, joined by hyphens. */
export const fileName = (garden: string, ending: string): string =>
  `${
    garden
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '') || 'garden'
  }.${ending}`;
