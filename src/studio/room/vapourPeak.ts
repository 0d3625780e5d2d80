import { clearanceMinutes } from '../../science/air/clearance.ts';
import { usualMixing } from './clearing.ts';
import { localRules } from './localRules.ts';

/** Grams per ml of what washes out; from memory, where the sheet doesn't say. */
const usualDensity = 0.8;

/** What was poured, where, and the limit that the safety data sheet prints. */
export interface VapourQuestion {
  readonly ml: number;
  /** null: not on the sheet; then 0.8 is taken. */
  readonly gramsPerMl: number | null;
  readonly roomM3: number;
  readonly airChangesPerHour: number;
  /** Typed from the safety data sheet. */
  readonly limitMgPerM3: number;
}

/** The worst case of a washout: all of it in the air at once. */
export interface VapourPeak {
  readonly peakMgPerM3: number;
  /** Peak over limit. */
  readonly timesLimit: number;
  /** Minutes until the peak has thinned to the limit, mixing factor 3 to 10; 0 where it is never passed. */
  readonly clearing: { readonly low: number; readonly high: number };
  readonly words: readonly string[];
}

/**
 * Peak of vapour if all evaporates at once into the room, against a limit typed from the safety data sheet, and how long the
 * air then takes to thin to it. A range, for planning a washout and nothing else.
 * @param question amounts above 0.
 */
export function vapourPeak(question: VapourQuestion): VapourPeak {
  const grams = question.ml * (question.gramsPerMl ?? usualDensity);
  const peakMgPerM3 = (grams * 1000) / question.roomM3;
  const timesLimit = peakMgPerM3 / question.limitMgPerM3;
  const minutes = (mixing: number) =>
    timesLimit > 1 ? clearanceMinutes(question.airChangesPerHour, 1 - 1 / timesLimit, mixing) : 0;
  return {
    peakMgPerM3,
    timesLimit,
    clearing: { low: minutes(usualMixing.low), high: minutes(usualMixing.high) },
    words: [
      'As if all evaporated at once and spread evenly; over the stone and in a wet rag it is far more, also where the room as a whole stays below the limit.',
      ...(question.gramsPerMl === null
        ? ['Density from memory, 0.8 g/ml: take it from the safety data sheet.']
        : []),
      'Low odour is not low exposure; vapour burns, so mind the flash point and never warm a wet stone with hot air.',
      localRules.air,
    ],
  };
}
