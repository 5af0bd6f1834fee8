import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const letters = '@expo-google-fonts/atkinson-hyperlegible-next';
const files = [
  `${letters}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`,
  `${letters}/400Regular_Italic/AtkinsonHyperlegibleNext_400Regular_Italic.ttf`,
  `${letters}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`,
  // Greek, Cyrillic, Arabic, Hebrew, Georgian, signs: what the letters above lack.
  'dejavu-fonts-ttf/ttf/DejaVuSans.ttf',
  'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf',
];

/**
 * The fonts every page is set in, from packages, so that a page looks alike on every machine, and after them those
 * that the caller adds.
 *
 * @throws Error when a file cannot be read
 */
export function fontsWith(added: readonly string[]): Buffer[] {
  const { resolve } = createRequire(import.meta.url);
  return [...files.map((file) => resolve(file)), ...added].map((file) => readFileSync(file));
}
