/**
 * How a sum of weights becomes a chance: `1 / (1 + exp(−(scale · logOdds + shift)))`, fitted on simulated faults apart from those on
 * which it is scored (`npm run bench:suspects -- --fit`). It holds for faults like those simulated, not for any one room.
 */
export const calibration = { scale: 1.001, shift: -0.8 } as const;
/** Likewise for "something else". */
export const elseCalibration = { scale: 3.183, shift: -8.08 } as const;
