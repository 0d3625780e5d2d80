import { treatmentKinds } from '../../../records/testPlan.ts';
import type { TrialAssignment, TrialPatch, TrialWish } from '../../../records/trialDesign.ts';
import { kindOfName } from './wishOfPlan.ts';

/** One thing to do while a trial is made: a level of a treatment, given to patches of one stone. */
export interface TrialStep {
  readonly stone: number;
  readonly treatment: string;
  readonly level: string;
  /** What is given it at once: the strip's number; null: each patch by itself, or the whole stone. */
  readonly strip: string | null;
  readonly codes: readonly string[];
}

/**
 * What to do on every stone, in the order of the line: what is drawn before what is etched, as far as a treatment's name tells. What
 * each patch gets by itself is done level by level, what a strip gets strip by strip, as they lie.
 */
export function trialSteps(
  wish: TrialWish,
  { patches, list }: { readonly patches: readonly TrialPatch[]; readonly list: readonly TrialAssignment[] },
): TrialStep[] {
  const got = new Map(list.map((each) => [each.code, each]));
  const inStrips = (wish.layout ?? 'split-plot') === 'split-plot';
  const treatments = [
    { of: 'sub' as const, factor: wish.sub, strips: false },
    ...(wish.whole ? [{ of: 'whole' as const, factor: wish.whole, strips: inStrips }] : []),
    ...(wish.perStone ? [{ of: 'perStone' as const, factor: wish.perStone, strips: false }] : []),
  ].toSorted((a, b) => stageOf(a.factor.name) - stageOf(b.factor.name));
  return Array.from({ length: wish.stones }, (_, index) => index + 1).flatMap((stone) => {
    const own = patches.filter((patch) => patch.stone === stone);
    return treatments.flatMap(({ of, factor, strips }) => {
      const step = (level: string, strip: string | null, some: readonly TrialPatch[]): TrialStep[] => {
        const codes = some.map(({ code }) => code).filter((code) => got.get(code)![of] === level);
        return codes.length === 0 ? [] : [{ stone, treatment: factor.name, level, strip, codes }];
      };
      return strips
        ? [...new Set(own.map(({ strip }) => strip))].flatMap((strip) => {
            const inStrip = own.filter((patch) => patch.strip === strip);
            return factor.levels.flatMap((level) => step(level, strip, inStrip));
          })
        : factor.levels.flatMap((level) => step(level, null, own));
    });
  });
}

function stageOf(name: string): number {
  return treatmentKinds.indexOf(kindOfName(name));
}
