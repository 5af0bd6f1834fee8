import { type SenderMapping, senderMapping } from '@sorrel/intake';

const KEY = 'sorrel senders';
/** More senders than this are hardly anybody's; the oldest goes. */
const MOST = 30;

/** How each sender writes its tables, as far as this device was told. */
export function knownSenders(): readonly SenderMapping[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    if (!Array.isArray(kept)) return [];
    return kept.flatMap((each: unknown) => {
      const read = senderMapping.safeParse(each);
      return read.success ? [read.data] : [];
    });
  } catch {
    return [];
  }
}

/** Remembers a sender, instead of what was known of the one of that name. */
export function remember(mapping: SenderMapping): void {
  const others = knownSenders().filter(({ sender }) => sender !== mapping.sender);
  try {
    localStorage.setItem(KEY, JSON.stringify([mapping, ...others].slice(0, MOST)));
  } catch {
    // A full or closed store: the next file is asked about again.
  }
}
