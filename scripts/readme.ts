/** A block of commands in a Markdown page and the output shown under it, if any. */
export interface Example {
  readonly commands: readonly string[];
  readonly output?: string;
}

/**
 * Finds the examples of a page: each block fenced as `sh`, with the block fenced as `text` that follows it at once.
 * A `\` at a line's end carries a command over; `#` starts a comment.
 */
export function examplesOf(markdown: string): Example[] {
  const fences = [...markdown.matchAll(/^```(\w*)\n([\s\S]*?)^```\s*$/gm)].map((match) => ({
    language: match[1] ?? '',
    body: match[2] ?? '',
    start: match.index,
    end: match.index + match[0].length,
  }));
  return fences.flatMap((fence, at) => {
    if (fence.language !== 'sh') return [];
    const next = fences[at + 1];
    const shows = next?.language === 'text' && markdown.slice(fence.end, next.start).trim() === '';
    const commands = fence.body
      .replace(/\\\n\s*/g, '')
      .split('\n')
      .map((line) => line.replace(/(^|\s)#.*$/, '').trim())
      .filter((line) => line !== '');
    return [{ commands, ...(shows && { output: next.body }) }];
  });
}

/** The page with the output under each example replaced by what its commands print now. */
export function withOutput(markdown: string, print: (command: string) => string): string {
  let page = markdown;
  for (const { commands, output } of examplesOf(markdown))
    if (output !== undefined) {
      const printed = commands.map(print).join('').trim();
      page = page.replace(`\`\`\`text\n${output}\`\`\``, () => `\`\`\`text\n${printed}\n\`\`\``);
    }
  return page;
}
