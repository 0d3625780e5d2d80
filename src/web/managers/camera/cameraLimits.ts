/** From where on something is said of a view or a photograph. All are our rules, unpublished; nothing is ever blocked. */
export const cameraLimits = {
  /** Degrees off square. */
  tiltDegrees: 3,
  /** Mean change of a small frame to the next, grey levels of 255. */
  change: 1.5,
  /** Degrees a second about whichever axis. */
  turning: 3,
  /** m/s², gravity taken off. */
  pushing: 0.4,
  /** Share of the guide that is burnt out. */
  whites: 0.02,
  /** Share of the guide that is wholly black. */
  blacks: 0.05,
  /** Light of one side over the other, percent. */
  unevenPercent: 20,
  /** Share of the guide that shines. */
  glare: 0.005,
  /** Variance of the Laplacian over that of the sharpest like view of this sitting. */
  besideSharpest: 0.6,
  /** Share of fine structure in a photograph at full size. */
  fineShare: 0.2,
} as const;
