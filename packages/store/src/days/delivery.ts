import type { Transaction } from 'kysely';
import type { Tables } from '../database/tables.ts';
import type { SampleWork } from './types.ts';

/** A sample that this worker is at. */
export interface Claimed extends SampleWork {
  readonly claim: string;
}

/** How samples reach the workers. Each change of it is part of the transaction that changes the sample's row. */
export interface Delivery {
  /** Readies whatever a day needs before its samples are handed in. */
  ready(garden: string): Promise<void>;
  /** These samples wait for a worker. */
  send(tx: Transaction<Tables>, garden: string, places: readonly string[]): Promise<void>;
  /** Takes over what a worker that is no more has left behind, when this is found out at the start. */
  recover(): Promise<void>;
  /** The next sample, marked as being worked at. */
  take(): Promise<Claimed | undefined>;
  /** It needs no worker any more. */
  settle(tx: Transaction<Tables>, claimed: Claimed): Promise<void>;
  /** It needs a worker once more. */
  again(tx: Transaction<Tables>, claimed: Claimed): Promise<void>;
  stop(): Promise<void>;
}
