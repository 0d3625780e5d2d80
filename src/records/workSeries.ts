import type { Measured } from '../foundation/measured.ts';
import type { Point } from '../science/geometry/point.ts';
import type { SeriesAnswer, SeriesTone } from './proofSeries.ts';

/** The places that stand for one tone of a work. */
export interface ToneArea {
  readonly origin: 'zones' | 'chosen';
  /** The zones that it was taken from; empty where it was drawn by hand. */
  readonly zones: readonly string[];
  /** Stone mm, from the stone's own top left corner. */
  readonly polygonsMm: readonly (readonly Point[])[];
}

/** The darkness of a full film that all pulls of a series are held against, once and for all. */
export interface SeriesReference {
  readonly darkness: number;
  /** The pull whose solid it was; null where it was typed. */
  readonly pull: number | null;
}

/** What is settled once for the pulls of a work. */
export interface SeriesSettings {
  /** The change of darkness that the artist accepts. */
  readonly tolerance: number;
  readonly areas: Readonly<Record<SeriesTone, ToneArea>>;
  /** null until the first pull with a solid is measured. */
  readonly reference: SeriesReference | null;
  /** Number of the pull that is held to be the best so far; null: the approval proof where there is one. */
  readonly best: number | null;
}

/** The settings as kept; version 0 where they are still those worked out from the zones. */
export interface KeptSeriesSettings extends SeriesSettings {
  readonly workId: string;
  readonly version: number;
  readonly changedAt: string | null;
}

/** σ of one reading in this room: one sheet set up and read again. */
export interface RoomNoise {
  /** null until it is known. */
  readonly sigma: Measured | null;
  readonly origin: 'repeats' | 'typed' | 'unknown';
  /** How many sheets it comes from, and how many differences. */
  readonly sheets: number;
  readonly degreesOfFreedom: number;
  /** What a person typed; it counts only until there are repeats. */
  readonly typed: number | null;
  readonly version: number;
  /** What to do where it isn't known, or weak; null where all is well. */
  readonly ask: string | null;
}

/** One pull of a series, as the pulls lie side by side. */
export interface SeriesPull {
  readonly id: string;
  readonly number: number;
  readonly paper: string;
  readonly age: number | string | null;
  readonly how: 'camera' | 'eye' | 'unread';
  /** How many photographs were averaged. */
  readonly readings: number;
  readonly tones: Readonly<Record<SeriesTone, Measured | null>>;
  readonly openFaults: readonly string[];
  /** Whether the answer compares it. */
  readonly compared: boolean;
}

export interface GoodToPrintState {
  readonly met: boolean;
  readonly pulls: readonly number[];
  readonly missing: readonly string[];
  /** What it rests on: how the pulls were read, and ± of one reading at 95 %; null where that is not known. */
  readonly reading: { readonly how: SeriesPull['how']; readonly doubt: number | null };
}

/** The series of a work: is it steady, and what is missing for good to print. */
export interface WorkSeries {
  readonly workId: string;
  readonly tolerance: number;
  readonly noise: RoomNoise;
  /** σ that the answer used; null where none is known. */
  readonly sigma: number | null;
  readonly answer: SeriesAnswer;
  readonly pulls: readonly SeriesPull[];
  /** The rule, signatures left aside. */
  readonly goodToPrint: GoodToPrintState;
  /** The pull to be photographed again before anything else is blamed; null where that was done. */
  readonly readAgain: { readonly pull: number; readonly why: string } | null;
}

/** Good to print as it was given; the approval proof is the standard from then on. */
export interface Approval {
  readonly id: string;
  readonly workId: string;
  readonly pullId: string;
  readonly pull: number;
  readonly givenAt: string;
  readonly artist: string;
  readonly printer: string;
  /** The pulls that it rests on. */
  readonly restsOn: readonly number[];
  readonly tolerance: number;
  /** The photograph that later pulls are held against; null where its tones were read by eye. */
  readonly photograph: string | null;
  readonly tones: Readonly<Record<SeriesTone, number | null>>;
  readonly withdrawn: {
    readonly at: string;
    readonly who: string;
    readonly why: string;
  } | null;
  /** What rests on it, in plain sentences. */
  readonly restsOnIt: readonly string[];
}

export interface ApprovalInput {
  readonly pull: number;
  /** The artist's mark. */
  readonly artist: string;
  /** The printer's mark. */
  readonly printer: string;
}
