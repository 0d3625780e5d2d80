import type { LiftAnswer, LiftQuestion } from '../../records/roomAnswer.ts';
import { frequencyMultiplier } from '../../science/lifting/frequencyMultiplier.ts';
import {
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  estimatedHorizontalCm,
  horizontalMultiplier,
  recommendedLimitKg,
  verticalMultiplier,
} from '../../science/lifting/liftingEquation.ts';
import { stoneMassKg } from '../stones/stoneMass.ts';
import { localRules } from './localRules.ts';

/** How far off the distance of the hands may be judged. Our rule. */
const reachSlackCm = 5;

/**
 * The recommended weight limit of one lift, and how the load stands to it, by the revised lifting equation.
 * @param question `horizontalCm` or `loadDepthCm` given.
 */
export function lift(question: LiftQuestion): LiftAnswer {
  const { verticalCm, distanceCm, asymmetryDegrees, liftsPerMinute, duration, coupling } = question;
  const reach = question.horizontalCm ?? estimatedHorizontalCm(question.loadDepthCm ?? 0, verticalCm);
  const multipliers = {
    horizontal: horizontalMultiplier(reach),
    vertical: verticalMultiplier(verticalCm),
    distance: distanceMultiplier(distanceCm),
    asymmetry: asymmetryMultiplier(asymmetryDegrees),
    frequency: frequencyMultiplier(liftsPerMinute, duration, verticalCm),
    coupling: couplingMultiplier(coupling, verticalCm),
  };
  const limitAt = (cm: number) =>
    recommendedLimitKg({ ...multipliers, horizontal: horizontalMultiplier(Math.max(0, cm)) });
  const value = recommendedLimitKg(multipliers);
  const range = { low: limitAt(reach + reachSlackCm), high: limitAt(reach - reachSlackCm) };
  const load = loadOf(question);
  const over = (kg: number, limit: number) => (limit > 0 ? kg / limit : null);
  const index = load && {
    value: over(load.value, value),
    low: over(load.low, range.high),
    high: over(load.high, range.low),
  };
  return {
    kind: 'lift',
    value,
    unit: 'kg',
    range: { ...range, reason: `hands ${reachSlackCm} cm further out or nearer than given` },
    formula:
      'limit = 23 kg · horizontal · vertical · distance · asymmetry · frequency · coupling; index = load / limit',
    source: 'NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting Equation, 1994, revised 2021',
    words: [...indexWords(index, value), ...scope, localRules.lift],
    multipliers,
    index,
  };
}

const scope = [
  'It covers one person lifting with two hands, standing on a floor that holds the foot; no carrying, no second person, no wet or round grip, no lift in a cramped place.',
];

function loadOf({ loadKg, stone }: LiftQuestion): { value: number; low: number; high: number } | null {
  if (loadKg !== null) return { value: loadKg, low: loadKg, high: loadKg };
  if (stone === null) return null;
  const { thicknessMm } = stone;
  return stoneMassKg({
    ...stone,
    cornerThicknessMm: [thicknessMm, thicknessMm, thicknessMm, thicknessMm],
  });
}

/** Below 1 is NIOSH's goal; near 3 "some experts" put most workers at risk. */
function indexWords(index: LiftAnswer['index'], limit: number): string[] {
  if (!(limit > 0)) return ['The equation allows no load here: out of its reach. Not by hand in this way.'];
  if (!index) return [];
  const { value, high } = index;
  if (high === null || high > 3)
    return [
      'The index may pass 3, where most people are at risk: not by hand; a hoist, a lifting table or a trolley.',
    ];
  if (high > 1)
    return [
      value !== null && value <= 1
        ? 'The index may pass 1, above which the risk of hurt rises: nearer, higher, or with a trolley.'
        : 'The index is above 1, where the risk of hurt rises: two people, a trolley, or another height.',
    ];
  return ['The index stays below 1, the goal that the equation sets; it promises nothing to any one person.'];
}
