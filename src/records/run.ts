import type { Logged, LoggedInput } from './logged.ts';

/** Corrections: stages that may come at any time. */
export const correctionStages = ['hone', 'scrape', 'spot-etch', 'counter-etch', 'redraw'] as const;
export type Correction = (typeof correctionStages)[number];

/** Every stage of the line in its order, then the corrections. */
export const stagesOfLine = [
  'level',
  'grain',
  'edges',
  'gum-border',
  'draw',
  'powder',
  'first-etch',
  'first-rest',
  'washout',
  'base',
  'base-air',
  'base-rest',
  'water',
  'roll-up',
  'trial-proofs',
  'second-powder',
  'second-etch',
  'second-etch-quick',
  'second-rest',
  'second-washout',
  'second-base',
  'second-base-air',
  'second-water',
  'second-roll-up',
  'proofs',
  'good-to-print',
  'edition',
  'close-down',
  'regrain',
  ...correctionStages,
] as const;
export type LineStage = (typeof stagesOfLine)[number];

/** What is picked for a run rather than typed. */
export type RunTool = 'roller' | 'ink' | 'batch' | 'press' | 'cloth' | 'paper';

/** A touch of one place: a zone's id, or that of a split wash's part. */
interface Touch {
  readonly place: string;
}

interface AtStage {
  readonly stage: LineStage;
  readonly words?: string | undefined;
}

export type PouredUnit = 'ml' | 'g';

/** How an amount is known; `as planned` was neither read off nor remembered, only said to be what the plan asks. */
export type PouredHow = 'measured' | 'as planned' | 'remembered' | 'not measured';

/** An amount of a material as it is logged. */
export interface PouredTold {
  /** By what it is, as plans name it. */
  readonly material: string;
  readonly how: PouredHow;
  /** null: it was used, and nobody measured how much. */
  readonly amount: { readonly value: number; readonly unit: PouredUnit } | null;
  /** Smallest mark of the vessel or scale that it was read on, in the amount's unit; null: not said. */
  readonly mark?: number | null | undefined;
  /** Left out or null: the stage that was under way. */
  readonly stage?: LineStage | null | undefined;
  readonly batchId?: string | null | undefined;
  /** Its entry in the hazard register. */
  readonly materialId?: string | null | undefined;
  readonly words?: string | undefined;
}

/** What each kind of event says; all else is taken from the event itself. */
export interface RunPayloads {
  readonly laid: Touch;
  readonly moved: Touch;
  readonly lifted: Touch;
  readonly buffed: { readonly place?: string | null | undefined; readonly round?: number | undefined };
  readonly trouble: { readonly place?: string | null | undefined; readonly words: string };
  readonly 'stage-started': AtStage;
  readonly 'stage-ended': AtStage;
  readonly skipped: AtStage;
  readonly repeated: AtStage;
  readonly correction: {
    readonly stage: Correction;
    readonly place?: string | null | undefined;
    readonly words?: string | undefined;
  };
  /** The stone was gummed, or its gum taken off, outside the stages that do so. */
  readonly gummed: { readonly words?: string | undefined };
  readonly 'gum-off': { readonly words?: string | undefined };
  readonly picked: {
    readonly tool: RunTool;
    readonly id?: string | null | undefined;
    readonly words: string;
  };
  /** How long something took, told afterwards: never taken for measured. */
  readonly remembered: {
    readonly stage?: LineStage | null | undefined;
    readonly place?: string | null | undefined;
    readonly seconds: number;
    readonly words?: string | undefined;
  };
  /** What was poured, dusted on or used up; every such event adds to the ones before. */
  readonly poured: PouredTold;
  /** What was done before leaving, as the list asked. */
  readonly left: { readonly done: readonly string[] };
  /** Takes back the event of that client id; taking back such an event restores what it took back. */
  readonly undo: { readonly clientId: string };
  readonly note: unknown;
}

export type RunEventKind = keyof RunPayloads;

/** What happened at a bench. */
export type RunEvent<Kind extends RunEventKind = RunEventKind> = Logged<RunPayloads, Kind>;

/** What a device sends. */
export type RunEventInput = LoggedInput<RunPayloads>;

/** One bench run of a work: what happened, beside the plan that it followed. */
export interface Run {
  readonly id: string;
  readonly workId: string;
  /** The first etch's plan that is followed; null where there was none. */
  readonly planId: string | null;
  /** The version of the work at its start. */
  readonly workVersion: number;
  readonly startedAt: string;
}

/** A run as a list shows it. */
export interface RunSummary extends Run {
  /** How many events it holds; also the last one's sequence number. */
  readonly events: number;
}

export interface RunInput {
  readonly workId: string;
  /** null: the work's newest, where there is one. */
  readonly planId: string | null;
  /** Chosen by who starts it, so that asking again makes no second run; null: none. */
  readonly clientId: string | null;
}
