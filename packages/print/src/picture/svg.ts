/** A number as it stands in a drawing: a tenth of a unit is finer than any printer. */
export const n = (value: number): string => String(Math.round(value * 10) / 10);

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Text made safe for a drawing; signs that XML forbids are left out. */
export const safe = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs to take out
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ud800-\udfff\ufffe\uffff]/gu, '')
    .replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign);

type Attributes = Readonly<Record<string, string | number>>;

const written = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? n(value) : value}"`)
    .join('');

/** An element; its content is taken as it stands. */
export const element = (name: string, attributes: Attributes, content = ''): string =>
  content === '' ? `<${name}${written(attributes)}/>` : `<${name}${written(attributes)}>${content}</${name}>`;

export const line = (x1: number, y1: number, x2: number, y2: number, more: Attributes = {}): string =>
  element('line', { x1, y1, x2, y2, ...more });

export const label = (x: number, y: number, text: string, more: Attributes = {}): string =>
  element('text', { x, y, ...more }, safe(text));

/** A path through points. */
export const through = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('');
