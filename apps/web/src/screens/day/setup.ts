import { BUFFER_SETS, buffersOf } from '@sorrel/engine/evidence';
import { useState } from 'react';

/** What a helper chooses once, and this device remembers for the day. */
export interface Setup {
  readonly meter: string;
  readonly method: 'water-1:1' | 'water-1:2' | 'cacl2-0.01M';
  readonly view: 'one' | 'grid';
  readonly bufferSet: string;
  readonly buffer: number;
  /** Warmth of the buffer, as typed. */
  readonly temperature: string;
  readonly temperatureUnit: string;
  /** pH of the reference soil, as typed. */
  readonly reference: string;
}

const [set = ''] = BUFFER_SETS;
const fresh: Setup = {
  meter: '',
  method: 'water-1:1',
  view: 'one',
  bufferSet: set,
  buffer: buffersOf(set)[1] ?? 7,
  temperature: '20',
  temperatureUnit: '°C',
  reference: '',
};

/** The setup of one garden on this device. A device that keeps nothing starts afresh. */
export function useSetup(garden: string): readonly [Setup, (part: Partial<Setup>) => void] {
  const key = `sorrel day ${garden}`;
  const [setup, setSetup] = useState<Setup>(() => ({ ...fresh, ...read(key) }));
  const change = (part: Partial<Setup>) =>
    setSetup((before) => {
      const after = { ...before, ...part };
      try {
        localStorage.setItem(key, JSON.stringify(after));
      } catch {
        // A full or closed store: the choice holds until the page goes.
      }
      return after;
    });
  return [setup, change];
}

function read(key: string): Partial<Setup> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    // Only what still has the kind of value it is meant to have.
    return Object.fromEntries(
      Object.entries(kept).filter(([name, value]) => typeof value === typeof fresh[name as keyof Setup]),
    );
  } catch {
    return {};
  }
}
