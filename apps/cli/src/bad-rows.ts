import { createWriteStream, type WriteStream } from 'node:fs';
import { csvCell, type Problem } from '@sorrel/engine/document';
import { exit, Stop } from './exit.ts';
import { hanging } from './layout.ts';
import { words } from './words.ts';

/** Problems of this many rows are shown; the rest go to the file of bad rows, when there is one. */
const MOST_SHOWN = 20;

/** Keeps the problems of rows that were left out, in little memory however many there are. */
export interface BadRows {
  readonly count: number;
  add(line: number, problems: readonly Problem[]): void;
  /** What to show the person, and the file closed. */
  end(): Promise<string>;
}

export function badRows(file: string | undefined): BadRows {
  const shown: string[] = [];
  let count = 0;
  let failure: Error | undefined;
  const out: WriteStream | undefined = file === undefined ? undefined : createWriteStream(file);
  out?.on('error', (error) => {
    failure = error;
  });
  out?.write('line,place,field,value,problem,fix\r\n');
  return {
    get count() {
      return count;
    },
    add(line, problems) {
      count += 1;
      for (const each of problems) {
        if (count <= MOST_SHOWN) {
          const label = `- ${words.tableRow(line, each.place?.startsWith('row ') ? undefined : each.place)}, ${each.field}: `;
          shown.push(hanging('', `${label}${each.message} ${each.fix}`, 0).replaceAll('\n', '\n  '));
        }
        const cells = [
          line,
          each.place,
          each.field,
          each.value === undefined ? '' : String(each.value),
          each.message,
          each.fix,
        ];
        out?.write(`${cells.map(csvCell).join(',')}\r\n`);
      }
    },
    async end() {
      if (out !== undefined) {
        await new Promise<void>((resolve) => {
          out.on('close', resolve);
          out.end();
        });
        if (failure !== undefined) throw new Stop(exit.nothing, words.cannotWrite(file ?? '', failure.message));
      }
      if (count > MOST_SHOWN) shown.push(words.tableMore(count - MOST_SHOWN));
      return shown.join('\n');
    },
  };
}
