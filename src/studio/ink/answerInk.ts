import type { Measured } from '../../foundation/measured.ts';
import type { InkAmounts, InkAnswer, InkQuestion } from '../../records/inkAnswer.ts';
import { inkForPulls, inkGrams, mixedViscosity, modifierPercent, startingSoftPercent } from './inkMix.ts';

/** What an estimate by a blending rule must say with it. */
export const blendWords =
  'An estimate by the logarithmic rule. Blending rules leave out, by their own scope, what thins as it is worked or holds particles, and ink does both: try it on the slab.';

/**
 * Where to start a mix from: soft for light, stiff for heavy work (common practice, no source), the parts weighted by area; and how
 * many grams (film and charge from memory), as a range. What was measured to be solid counts as heavy, whatever the
 * drawing calls it: our rule.
 */
export function answerInk(question: InkQuestion): InkAnswer {
  const { areasCm2, solidShare, modifierPercent: percent, proofs, edition, viscosityPaS } = question;
  const soft = startingSoftPercent(withSolids(areasCm2, solidShare));
  const drawnCm2 = areasCm2.light + areasCm2.middle + areasCm2.dark;
  const coveredMm2 = 100 * (question.coveredCm2 ?? drawnCm2);
  const grams = (pulls: number) => (pulls === 0 ? null : inkForPulls(coveredMm2, pulls));
  const [proofsGrams, editionGrams] = [grams(proofs), grams(edition)];
  const wanted = [proofsGrams, editionGrams].filter((one) => one !== null);
  return {
    parts: soft === null ? null : { soft: Math.round(soft), stiff: 100 - Math.round(soft) },
    why: whyWords(question, soft),
    proofsGrams,
    editionGrams,
    mix: soft === null || wanted.length === 0 ? null : mixOf(Math.round(soft), percent ?? 0, wanted),
    modifier: percent === null ? null : shares(percent),
    stiffness:
      soft === null || viscosityPaS === null
        ? null
        : { paS: mixedViscosity(Math.round(soft), viscosityPaS.soft, viscosityPaS.stiff), words: blendWords },
    warnings: [
      ...(question.coveredCm2 === null && wanted.length > 0
        ? ['Reckoned as if the drawing were covered whole: an upper bound for the film.']
        : []),
      ...(wanted[0]?.warnings ?? []),
    ],
  };
}

/** At least as much counts as dark as was measured to be solid; light and middle shrink in proportion. */
function withSolids(
  areas: InkQuestion['areasCm2'],
  solidShare: number | null,
): Record<'light' | 'middle' | 'dark', number> {
  const whole = areas.light + areas.middle + areas.dark;
  const dark = whole * (solidShare ?? 0);
  if (dark <= areas.dark) return { ...areas };
  const rest = (whole - dark) / (whole - areas.dark);
  return { light: areas.light * rest, middle: areas.middle * rest, dark };
}

function whyWords({ areasCm2, solidShare }: InkQuestion, soft: number | null): string {
  if (soft === null) return 'Nothing that carries ink is known of the drawing.';
  const whole = areasCm2.light + areasCm2.middle + areasCm2.dark;
  const share = (area: number) => `${Math.round((100 * area) / whole)} %`;
  const drawn = `${share(areasCm2.light)} light, ${share(areasCm2.middle)} middle, ${share(areasCm2.dark)} heavy by area`;
  const raised = (solidShare ?? 0) > areasCm2.dark / whole;
  return `${drawn}${raised ? `; ${Math.round(100 * solidShare!)} % was measured solid and counts as heavy (our rule)` : ''}. Soft for light, 70:30 for middle, stiff for heavy work: common practice, no source.`;
}

function mixOf(
  softPercent: number,
  percent: number,
  wanted: readonly Measured[],
): { readonly low: InkAmounts; readonly high: InkAmounts } {
  const amounts = (ink: number): InkAmounts => ({
    ...inkGrams(softPercent, ink),
    modifierGrams: (ink * percent) / 100,
  });
  const sum = (of: (one: Measured) => number) => wanted.reduce((all, one) => all + of(one), 0);
  return { low: amounts(sum(({ low }) => low)), high: amounts(sum(({ high }) => high)) };
}

function shares(percent: number): NonNullable<InkAnswer['modifier']> {
  const { onInk, ofWhole } = modifierPercent(percent, 100);
  return { onInkPercent: onInk, ofWholePercent: ofWhole };
}
