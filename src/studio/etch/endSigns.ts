/**
 * What ends each part of the run, or says that something is wrong, whatever the clock says.
 * Common practice, no source.
 */
export const endSigns = {
  lay: 'wet to its edge, no dry spot',
  move: 'still shining when you come back; what dulls is moved first',
  lift: 'the puddle is gone, a thin even film stays',
  buff: 'the cloth stops dragging, no shine left',
} as const;

/** Rounds of buffing, the lifting one counted; common practice, no source. */
export const buffingRounds = 3;
