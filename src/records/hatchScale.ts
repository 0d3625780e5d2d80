/** One step of the hatch scale: its letter, and how much of it is ink, 0..1. */
export interface HatchStep {
  readonly letter: string;
  readonly coverage: number;
}

/** The steps against which tones are told by eye, lightest first; finer where the eye tells lights apart. Our rule. */
export const hatchScale: readonly HatchStep[] = [
  0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1,
].map((coverage, index) => ({ letter: String.fromCharCode(65 + index), coverage }));
