import type { BenchTaps } from './benchTaps.ts';

export type BenchPhase = 'ready' | 'etching' | 'buffing';

/** A place on the stone as the bench shows it. */
export interface BenchPlace {
  readonly id: string;
  readonly letter: string;
  readonly state: 'waiting' | 'lit' | 'wet' | 'late' | 'lifted';
  /** How far its time untouched has run: 0 just touched, 1 at the gap that is allowed. */
  readonly share: number;
  /** Seconds until it must be touched, negative where late; null where nothing lies there. */
  readonly seconds: number | null;
}

/** All that a bench screen says at one moment. */
export interface BenchView {
  readonly phase: BenchPhase;
  /** The letter of the place to touch; null where the whole stone is meant. */
  readonly letter: string | null;
  readonly seconds: number | null;
  /** What the seconds are: what is left of it, how long until it, for how long it is overdue, or has lain. */
  readonly counting: 'left' | 'until' | 'over' | 'on';
  /** What to do, as it is also spoken. */
  readonly words: string;
  readonly stayOff: string | null;
  readonly endSign: string;
  readonly next: string | null;
  readonly nextSeconds: number | null;
  /** What the other person does now; null for one person. */
  readonly other: string | null;
  readonly places: readonly BenchPlace[];
  readonly taps: BenchTaps;
  /** What was not as planned, oldest first. */
  readonly facts: readonly string[];
}
