import type { LineStage } from './run.ts';

/** Classes of the Globally Harmonized System that meet the trade, and dust that can explode. */
export type HazardClass =
  | 'flammable'
  | 'oxidising'
  | 'corrosive'
  | 'toxic'
  | 'irritant'
  | 'sensitising'
  | 'long-term'
  | 'environment'
  | 'dust-explosive';

/** What a person enters of a material from its safety data sheet; null or empty means: not stated. */
export interface MaterialDraft {
  /** By what it is, never by what it is sold as. */
  readonly name: string;
  readonly stages: readonly LineStage[];
  /** null: the sheet was not read; empty: it states none. */
  readonly hazards: readonly HazardClass[] | null;
  /** The hazard statements as the sheet prints them. */
  readonly statements: string;
  /** ISO date of the sheet, and where the sheet itself is kept. */
  readonly sheetDate: string | null;
  readonly sheetPlace: string;
  /** Limit at work as the sheet prints it. */
  readonly limitMgPerM3: number | null;
  readonly flashPointC: number | null;
  readonly gramsPerMl: number | null;
  readonly protection: string;
  readonly firstAid: string;
  readonly storage: string;
  readonly waste: string;
  readonly note: string;
}

/** A material as it is kept. */
export interface Material extends MaterialDraft {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}
