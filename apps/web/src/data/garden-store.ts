import type { GardenDocument } from '@sorrel/engine/document';
import type { Arrangement } from '@sorrel/engine/placing';
import type { Entry } from '@sorrel/store/entry';
import type { Assembled, Numbered } from '@sorrel/store/record';

export type { Entry, Numbered };

export interface GardenSummary {
  readonly id: string;
  readonly name: string;
  /** Shipped with Sorrel; every figure is invented. */
  readonly demo: boolean;
  readonly places: number;
}

/** A garden as its record stands now. */
export interface GardenRecord {
  readonly id: string;
  /** What the engine reads. */
  readonly document: GardenDocument;
  /** Id of the thing each place, test, application and material came from, in the order of the document. */
  readonly from: Assembled['from'];
}

/** Where gardens are kept. Entries are only ever added; sending one twice is harmless. */
export interface GardenStore {
  list(): Promise<readonly GardenSummary[]>;
  /** @throws NotFound when there is no such garden */
  document(garden: string): Promise<GardenRecord>;
  /** Everything ever written about a garden after entry `since`, corrections and undos included, in the order of arrival. */
  entries(garden: string, since?: number): Promise<readonly Numbered[]>;
  /** Writes entries of one garden, all or none. @throws Refused with a sentence when one does not hold */
  append(garden: string, entries: readonly Entry[]): Promise<void>;
  /** Takes one entry back, by adding an entry that says so. */
  undo(garden: string, entry: string): Promise<void>;
  /** The whole record as one file (`docs/garden-export.schema.json`). */
  exportGarden(garden: string): Promise<string>;
  /** Reads such a file; reading it twice is harmless. @returns id of its garden @throws Refused */
  importGarden(text: string): Promise<string>;
  /** What only a server can give; undefined where gardens are kept in the page. */
  readonly served?: Served;
}

export type PaperName =
  | 'work-sheet.pdf'
  | 'handouts.pdf'
  | 'labels.pdf'
  | 'plant.pdf'
  | 'usable.pdf'
  | 'symptoms.pdf'
  | 'applications.csv'
  | 'shopping.csv';

export interface Served {
  /** Address of a paper or a table, made when it is opened. */
  paper(garden: string, name: PaperName, query?: Readonly<Record<string, string>>): string;
  /** Keeps a photo, drawn anew without what the camera wrote into it. @returns its name, for observations @throws Refused */
  keepPhoto(photo: Blob): Promise<string>;
  /** Address of a kept photo. */
  photo(name: string): string;
  /** The handout of an arrangement of plants. @throws Refused */
  arrangementPdf(garden: string, units: 'metric' | 'us', arrangement: Arrangement): Promise<Blob>;
  /** The plans and papers of a soil day. */
  readonly day: ServedDay;
  /** Whole address of the garden's calendar, for calendar programs. */
  calendarFeed(garden: string): Promise<string>;
}

export type DayPaper =
  | 'handouts.pdf'
  | 'handouts.zip'
  | 'merge.csv'
  | 'summary.pdf'
  | 'anonymous.csv'
  | `handouts/${string}.pdf`;

/** How far the plans of a soil day are; each sample is planned once, in a queue that goes on without this page. */
export interface DayProgress {
  readonly state: 'none' | 'running' | 'paused' | 'done';
  readonly asOf: string | null;
  readonly samples: number;
  readonly waiting: number;
  readonly running: number;
  readonly done: number;
  readonly failed: number;
  /** New or changed since they were handed in. */
  readonly changed: number;
  readonly jobs: readonly {
    readonly place: string;
    readonly code: string;
    readonly state: 'new' | 'waiting' | 'running' | 'done' | 'failed';
    readonly changed: boolean;
    readonly error?: string;
  }[];
}

interface DayGroup {
  /** null: samples without a neighbourhood, or all together. */
  readonly name: string | null;
  readonly samples: number;
  readonly medianPh: number | null;
  /** In the order of `classes` of the summary. */
  readonly classes: readonly number[];
}

/** A soil day's soils together. It names people: for the educator alone. */
export interface DaySummary {
  readonly samples: number;
  readonly classes: readonly { readonly name: string; readonly low: number | null; readonly high: number | null }[];
  readonly all: DayGroup;
  readonly neighbourhoods: readonly DayGroup[];
  readonly decisions: readonly { readonly decision: string; readonly text: string; readonly count: number }[];
  readonly problems: readonly { readonly code: string; readonly text: string; readonly count: number }[];
  readonly shopping: readonly { readonly product: string; readonly needed: string; readonly kilograms: number }[];
  readonly calls: readonly {
    readonly code: string;
    readonly person: string | null;
    readonly place: string;
    readonly name: string;
    readonly why: readonly string[];
  }[];
}

export interface ServedDay {
  progress(garden: string): Promise<DayProgress>;
  /** Hands in every sample that is new or has changed. */
  plan(garden: string): Promise<DayProgress>;
  step(garden: string, name: 'pause' | 'resume' | 'retry'): Promise<DayProgress>;
  summary(garden: string, query: Readonly<Record<string, string>>): Promise<DaySummary>;
  /** Address of a paper or a table, made when it is opened. */
  paper(garden: string, name: DayPaper, query?: Readonly<Record<string, string>>): string;
}

/** The server is not there, or did not answer. */
export class NoAnswer extends Error {}
export class NotFound extends Error {}

/** The store would not take an entry; the message says why. */
export class Refused extends Error {
  readonly problems: readonly { readonly field: string; readonly message: string; readonly fix?: string }[];
  constructor(message: string, problems: Refused['problems'] = []) {
    super(message);
    this.problems = problems;
  }
}
