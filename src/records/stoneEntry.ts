import type { Measured } from '../foundation/measured.ts';
import type { AttachedPhotograph } from './attachedPhotograph.ts';
import type { GumState } from './rack.ts';
import type { Stone } from './stone.ts';
import type { StoneVerdict } from './stoneVerdicts.ts';
import type { WorkStage } from './work.ts';

/** What a person writes about a stone. */
export interface StoneDraft extends Omit<Stone, 'id' | 'putBy' | 'version'> {
  readonly photographs: readonly AttachedPhotograph[];
  readonly note: string;
}

/** A stone as it is kept. */
export interface KeptStone extends StoneDraft, Stone {
  readonly createdAt: string;
  readonly changedAt: string;
  /** Made by the invented studio that ships with Stonetone. */
  readonly sample: boolean;
}

/** A work named in passing. */
export interface WorkMention {
  readonly id: string;
  readonly title: string;
  readonly stage: WorkStage;
}

/** A stone as the list shows it. */
export interface StoneSummary {
  readonly id: string;
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly colour: string;
  readonly putBy: boolean;
  readonly version: number;
  readonly changedAt: string;
  readonly sample: boolean;
  /** The work on it that was changed last; null where it carries none. */
  readonly work: WorkMention | null;
  /** Whether it lies under gum, by that work; null without one. */
  readonly gum: GumState | null;
}

/** A stone whole, with what follows from it. */
export interface StoneEntry extends KeptStone {
  readonly massKg: Measured | null;
  readonly verdict: StoneVerdict;
  /** The works on it, those put by left out, last changed first. */
  readonly works: readonly WorkMention[];
}
