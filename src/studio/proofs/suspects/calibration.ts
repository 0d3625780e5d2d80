/**
 * How a sum of weights becomes a chance: `1 / (1 + exp(−(scale · logOdds + shift)))`, set on simulated faults apart from those on
 * which it is scored: fitted to maps (`npm run bench:suspects -- --fit`: 1.018, −0.825), then moved to where maps and 96 cases from
 * photographs, in which more false signs are seen, both hold best. It holds for faults like those simulated, not for any one room.
 */
export const calibration = { scale: 1.08, shift: -0.97 } as const;
/** Likewise for "something else", on maps alone. */
export const elseCalibration = { scale: 2.344, shift: -6.416 } as const;
