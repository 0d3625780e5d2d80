import type { RunTool } from './run.ts';

/** What is kept of the studio's own tools and set-ups; batches have a log of their own. */
export type KitTool = Exclude<RunTool, 'batch'>;

interface KitCommon {
  readonly name: string;
  readonly note: string;
}

/** What a person writes about a tool or set-up; null or empty means: not measured, not stated. */
export type KitDraft =
  | (KitCommon & {
      readonly tool: 'roller';
      /** Such as leather, rough or smooth. */
      readonly nap: string;
      /** ISO date on which it was last conditioned. */
      readonly conditionedOn: string | null;
      readonly widthMm: number | null;
    })
  | (KitCommon & {
      readonly tool: 'ink';
      readonly softParts: number | null;
      readonly stiffParts: number | null;
      /** Modifier, % by weight of the ink. */
      readonly modifierPercent: number | null;
      /** At what length a string of it breaks, cm. */
      readonly stringCm: number | null;
    })
  | (KitCommon & {
      readonly tool: 'press';
      /** Eighths of a turn from contact. */
      readonly pressureEighths: number | null;
      readonly packing: string;
      readonly scraperMm: number | null;
    })
  | (KitCommon & {
      readonly tool: 'cloth';
      readonly cloth: string;
    })
  | (KitCommon & {
      readonly tool: 'paper';
      readonly gramsPerM2: number | null;
      readonly damp: boolean | null;
    });

/** A tool or set-up as it is kept. */
export type KitEntry = KitDraft & {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
};

/** What was picked last anywhere in the studio, so that it can be offered first. */
export interface LastInHand {
  readonly tool: RunTool;
  /** Id of the kit entry or batch; null where it was told in words alone. */
  readonly id: string | null;
  readonly words: string;
  readonly runId: string;
  /** When it was kept, by the server's clock. */
  readonly receivedAt: string;
}
