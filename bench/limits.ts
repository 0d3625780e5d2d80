/** What the engine is held to. Lengths in mm, coverage 0..1. */
export interface AccuracyLimits {
  readonly medianOverCases: number;
  readonly worstMedian: number;
  readonly worstP90: number;
  readonly scanMedian: number;
  readonly scanP90: number;
  readonly coverageError: number;
  readonly coverageErrorOnCurve: number;
  readonly intervalsHold: number;
  readonly intervalWidth: number;
  readonly overlap: number;
  readonly noChangeClaimed: number;
  readonly repeatDifference: number;
}

/** The project's measures, stated for phone-like pictures of 9 to 24 megapixels over 300 × 400 mm (5 to 10 px/mm). */
export const fullLimits: AccuracyLimits = {
  medianOverCases: 0.01,
  worstMedian: 0.02,
  worstP90: 0.12,
  scanMedian: 0.06,
  scanP90: 0.35,
  coverageError: 0.006,
  coverageErrorOnCurve: 0.02,
  intervalsHold: 0.92,
  intervalWidth: 0.03,
  overlap: 0.93,
  noChangeClaimed: 0.001,
  repeatDifference: 0.005,
};

/**
 * The same for 2 megapixels. A pixel is then about 0.35 mm, more than twice as wide as at 9 megapixels: errors in px
 * stay, so lengths double and a half; tones average as many pixels less noise, and zones' rims weigh more; maps
 * are off by a pixel along their outlines, which on blots some 30 mm across costs about 5 % of overlap more.
 */
export const smallLimits: AccuracyLimits = {
  ...fullLimits,
  medianOverCases: 0.025,
  worstMedian: 0.05,
  worstP90: 0.3,
  coverageError: 0.01,
  intervalWidth: 0.045,
  overlap: 0.88,
};
