import type { GumState } from './rack.ts';
import type { ImageExtent } from './stone.ts';
import type { KeptStone } from './stoneEntry.ts';
import type { BorderCheck } from './stoneVerdicts.ts';
import type { Work, WorkStage } from './work.ts';

/** A work as the list shows it. */
export interface WorkSummary {
  readonly id: string;
  readonly title: string;
  readonly stoneId: string;
  readonly stoneName: string;
  readonly stage: WorkStage;
  /** True where it was entered halfway. */
  readonly halfway: boolean;
  readonly zones: number;
  readonly putBy: boolean;
  readonly version: number;
  readonly changedAt: string;
  readonly sample: boolean;
  /** Whether its stone lies under gum; null for one that is put by. */
  readonly gum: GumState | null;
}

/** What follows from the zones of a work; areas and gaps on the stone. */
export interface WorkVerdicts {
  readonly areasCm2: readonly { readonly zone: string; readonly areaCm2: number }[];
  /** The stone outside all zones. */
  readonly groundCm2: number;
  readonly overlaps: readonly { readonly a: string; readonly b: string; readonly areaCm2: number }[];
  /** Narrow strips of ground between two zones. */
  readonly gaps: readonly { readonly a: string; readonly b: string; readonly gapMm: number }[];
  /** What prints, else the work rectangle; null where neither is known. */
  readonly image: ImageExtent | null;
  readonly borders: BorderCheck | null;
  /** What to mind, in sentences. */
  readonly sentences: readonly string[];
}

/** A work whole, with its stone and what follows from its zones. */
export interface WorkEntry extends Work {
  readonly stone: KeptStone;
  readonly verdicts: WorkVerdicts;
}
