import { readFileSync } from 'node:fs';
import { exit, Stop } from './exit.ts';
import { words } from './words.ts';

/** The text of a file, or of standard input for `-`. */
export function readText(file: string): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    throw new Stop(exit.nothing, words.cannotRead(nameOf(file), reasonOf(error)));
  }
}

/** What a JSON or YAML file holds; `undefined` when it is empty. YAML is loaded only when the text is not JSON. */
export async function readDocument(file: string): Promise<unknown> {
  const text = readText(file);
  if (text.trim() === '') return undefined;
  if (/^\s*[[{]/.test(text)) {
    try {
      return JSON.parse(text);
    } catch (error) {
      if (/\.json$/i.test(file)) throw new Stop(exit.nothing, words.cannotParse(nameOf(file), 'JSON', reasonOf(error)));
    }
  }
  const { parseYaml } = await import('./yaml.ts');
  try {
    return await parseYaml(text);
  } catch (error) {
    throw new Stop(exit.nothing, words.cannotParse(nameOf(file), 'YAML', reasonOf(error)));
  }
}

/** A file as it is spoken of. */
export const nameOf = (file: string): string => (file === '-' ? words.pipedIn : file);

export function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === 'ENOENT') return words.noSuchFile;
  if (code === 'EISDIR') return words.isFolder;
  if (code === 'EACCES') return words.notAllowed;
  return error instanceof Error ? error.message : String(error);
}
