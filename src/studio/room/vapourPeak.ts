import type { VapourAnswer } from '../../records/roomAnswer.ts';
import type { VapourQuestion } from '../../records/roomQuestion.ts';
import { clearanceMinutes } from '../../science/air/clearance.ts';
import { usualMixing } from './clearing.ts';
import { localRules } from './localRules.ts';

/** Grams per ml of what washes out; from memory, where the sheet doesn't say. */
const usualDensity = 0.8;
/** Air nearer than this under a flash point is told as at it: flash points and rooms are both known to a few degrees. Our rule. */
const flashSlackC = 15;

/**
 * Peak of vapour if all evaporates at once into the room, against a limit typed from the safety data sheet, and how long the
 * air then takes to thin to it. A range, for planning a washout and nothing else.
 * @param question amounts above 0.
 */
export function vapourPeak(question: Omit<VapourQuestion, 'kind'>): VapourAnswer {
  const grams = question.ml * (question.gramsPerMl ?? usualDensity);
  const value = (grams * 1000) / question.roomM3;
  const timesLimit = value / question.limitMgPerM3;
  const minutes = (mixing: number) =>
    timesLimit > 1 ? clearanceMinutes(question.airChangesPerHour, 1 - 1 / timesLimit, mixing) : 0;
  return {
    kind: 'vapour',
    value,
    unit: 'mg/m³',
    range: {
      low: value,
      high: value * usualMixing.high,
      reason: 'from spread evenly, which vapour is not, to a mixing factor of 10 near the stone',
    },
    formula:
      'peak = ml · g/ml · 1000 / room; thinned to the limit after ln(peak / limit) · k / N · 60 min, k the mixing factor (3 to 10), N air changes an hour',
    source:
      'mass balance; thinning as CDC 2003, Guidelines for Environmental Infection Control, Table B.1; mixing factors 3 to 10: general ventilation practice, no source; the limit as typed from the safety data sheet',
    words: [
      'As if all evaporated at once and spread evenly; over the stone and in a wet rag it is far more, also where the room as a whole stays below the limit.',
      ...(question.gramsPerMl === null
        ? ['Density from memory, 0.8 g/ml: take it from the safety data sheet.']
        : []),
      ...flashWords(question),
      'Low odour is not low exposure; vapour burns, so mind the flash point and never warm a wet stone with hot air unless the maker’s sheet allows it.',
      localRules.air,
    ],
    timesLimit,
    clearing: { low: minutes(usualMixing.low), high: minutes(usualMixing.high) },
  };
}

function flashWords({ flashPointC, airC }: Pick<VapourQuestion, 'flashPointC' | 'airC'>): string[] {
  if (flashPointC === null)
    return ['No flash point typed: take it from the safety data sheet before anything warm comes near.'];
  if (airC === null) return [];
  return airC >= flashPointC - flashSlackC
    ? [
        `Air of ${airC} °C is at or near the flash point of ${flashPointC} °C: vapour over the stone may catch fire from a spark or a switch. Cooler air, no warm fan.`,
      ]
    : [
        `Air of ${airC} °C is more than ${flashSlackC} °C below the flash point of ${flashPointC} °C; a mist or a soaked rag can burn all the same.`,
      ];
}
