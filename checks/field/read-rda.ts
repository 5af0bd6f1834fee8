import { gunzipSync } from 'node:zlib';

type Value = null | string | readonly number[] | readonly Value[] | Pairs | Held;
/** A pair list: names and values in order. */
interface Pairs {
  readonly pairs: readonly (readonly [name: string, value: Value])[];
}
/** A vector that carries attributes, such as the names of a table's columns. */
interface Held {
  readonly value: Value;
  readonly attributes: Pairs;
}

const MAGIC = 'RDX2\nX\n';
/** After the magic: three whole numbers of version. */
const HEADER = MAGIC.length + 12;

/**
 * The columns of numbers of the first data frame in an R data file (gzip, XDR, version 2).
 *
 * @throws Error for another format or a kind of value the format has and this reader does not know
 */
export function readDataFrame(file: Uint8Array): ReadonlyMap<string, readonly number[]> {
  const bytes = gunzipSync(file);
  if (bytes.toString('latin1', 0, MAGIC.length) !== MAGIC) throw new Error('not an R data file, version 2, XDR');
  const first = isPairs(reader(bytes)());
  const frame = first?.pairs[0]?.[1];
  if (frame === undefined || frame === null || typeof frame !== 'object' || !('attributes' in frame))
    throw new Error('the file holds no data frame');
  const names = frame.attributes.pairs.find(([name]) => name === 'names')?.[1];
  if (!Array.isArray(names) || !Array.isArray(frame.value)) throw new Error('the data frame has no named columns');
  const columns = frame.value as readonly Value[];
  return new Map(names.map((name, index) => [String(name), columns[index] as readonly number[]]));
}

const isPairs = (value: Value): Pairs | undefined =>
  value !== null && typeof value === 'object' && 'pairs' in value ? value : undefined;

/** Reads one item after another; names met before are referred to by number. */
function reader(bytes: Buffer): () => Value {
  let at = HEADER;
  const seen: string[] = [];
  const whole = (): number => {
    at += 4;
    return bytes.readInt32BE(at - 4);
  };
  const many = <T>(each: () => T): T[] => Array.from({ length: whole() }, each);
  const real = (): number => {
    at += 8;
    return bytes.readDoubleBE(at - 8);
  };
  const vector = (kind: number): Value | undefined => {
    if (kind === 14) return many(real);
    if (kind === 13 || kind === 10) return many(whole);
    if (kind === 16 || kind === 19) return many(item);
    return undefined;
  };
  function item(): Value {
    const flags = whole();
    const kind = flags & 255;
    if (kind === 254) return null;
    if (kind === 255) return seen[(flags >> 8 || whole()) - 1] ?? null;
    if (kind === 1) {
      const name = String(item());
      seen.push(name);
      return name;
    }
    if (kind === 9) {
      const length = whole();
      if (length < 0) return null;
      at += length;
      return bytes.toString('utf8', at - length, at);
    }
    if (kind === 2) {
      if (flags & 512) item();
      const name = flags & 1024 ? String(item()) : '';
      const pair = [name, item()] as const;
      return { pairs: [pair, ...(isPairs(item())?.pairs ?? [])] };
    }
    const value = vector(kind);
    if (value === undefined) throw new Error(`R value of kind ${kind} at byte ${at}`);
    const attributes = flags & 512 ? isPairs(item()) : undefined;
    return attributes === undefined ? value : { value, attributes };
  }
  return item;
}
