import { ok, type Result } from '../../../foundation/result.ts';
import type { CheapestTrial, TrialDesign, TrialPower, TrialWish } from '../../../records/trialDesign.ts';
import { combinationsOf, rowsOf, stoneShape } from './drawnTreatments.ts';
import { errorsOf } from './stratumErrors.ts';
import { auditLayout } from './trialAudit.ts';
import { fitsOnStone, type TrialLayout, trialLayout } from './trialLayout.ts';
import { trialPower, usualScatter } from './trialPower.ts';

/** A trial with the list of who gets what, which whoever reads must not see before reading. */
export interface DesignedTrial {
  readonly design: TrialDesign;
  readonly list: TrialLayout['list'];
}

/** Larger trials than these are not looked for. */
const most = { stones: 8, stripRepeats: 2, patchRepeats: 4 };

/**
 * Lays a trial out, says what it could notice, and what the cheapest one would be that notices what is wanted.
 * @returns `trial-does-not-fit` where its patches don't go on the stone.
 */
export function designTrial(wish: TrialWish): Result<DesignedTrial> {
  const layout = trialLayout(wish);
  if (!layout.ok) return layout;
  const { patches, patchMm, list } = layout.value;
  const power = powersOf(wish);
  return ok({
    design: {
      schema: 'stonetone/trial-design/1',
      wish,
      patchMm,
      patches,
      power,
      cheapest: wish.wanted === null ? null : cheapestFor(wish, wish.wanted),
      warnings: warningsOf(wish, power),
      audit: auditLayout(wish, layout.value),
    },
    list,
  });
}

function powersOf(wish: TrialWish): TrialPower[] {
  const own = wish.scatter ? [trialPower(wish, 'this room', wish.scatter)] : [];
  return [
    ...own,
    ...(['low', 'middle', 'high'] as const).map((of) => trialPower(wish, of, usualScatter[of])),
  ];
}

/** Stones cost a day each, strips an etch, patches a minute: the fewest stones first, then strips, then patches. */
function cheapestFor(wish: TrialWish, wanted: number): CheapestTrial | 'none' {
  const strips = wish.whole && (wish.layout ?? 'split-plot') === 'split-plot' ? most.stripRepeats : 1;
  // Whole stones are shared out evenly among what is given to whole stones.
  const step = wish.perStone?.levels.length ?? 1;
  for (let stones = step; stones <= most.stones; stones += step)
    for (let stripRepeats = 1; stripRepeats <= strips; stripRepeats++)
      for (let patchRepeats = 1; patchRepeats <= most.patchRepeats; patchRepeats++) {
        const size = { ...wish, stones, stripRepeats, patchRepeats };
        if (!fitsOnStone({ ...size, patchMm: null }) || !notices(size, wanted)) continue;
        const { across, down, perBlock } = stoneShape(size);
        return { stones, stripRepeats, patchRepeats, patches: stones * across * down * perBlock };
      }
  return 'none';
}

/** Two levels, scatter known: 1.96 standard errors for the claim and 0.84 for 8 times in 10. Less is never noticed. */
const leastErrors = 2.7;

function notices(wish: TrialWish, wanted: number): boolean {
  const errors = errorsOf(wish, wish.scatter ?? usualScatter.middle);
  const tight = (['whole', 'sub', 'perStone'] as const).some(
    (of) => (wish[of]?.levels.length ?? 1) > 1 && wanted < leastErrors * Math.sqrt(errors[of].variance),
  );
  if (tight) return false;
  const { whole, sub, perStone } = trialPower(wish, 'middle', wish.scatter ?? usualScatter.middle);
  const asked = [
    ...(wish.whole ? [whole] : []),
    ...(wish.sub.levels.length > 1 ? [sub] : []),
    ...(wish.perStone ? [perStone ?? null] : []),
  ];
  return asked.every((smallest) => smallest !== null && smallest <= wanted);
}

function warningsOf(wish: TrialWish, power: readonly TrialPower[]): string[] {
  const judged = power[wish.scatter ? 0 : 1]!;
  const found: string[] = [];
  const split = (wish.layout ?? 'split-plot') === 'split-plot';
  if (wish.perStone && judged.perStone === null)
    found.push(
      `Every level of ${wish.perStone.name} is given to one stone only: no cause could be assigned to a difference between stones. Two stones a level at least.`,
    );
  if (!split && judged.sub === null)
    found.push(
      'No combination is repeated: nothing could be said of any treatment. Another stone, block or row at least.',
    );
  if (wish.layout === 'row-column' && rowsOf(wish) < combinationsOf(wish).length)
    found.push(
      `${rowsOf(wish)} rows of ${combinationsOf(wish).length} combinations: columns are not complete, which costs some sharpness; ${combinationsOf(wish).length} rows make a full square.`,
    );
  if (split && wish.whole && judged.whole === null)
    found.push(
      `Every level of ${wish.whole.name} is given to one strip only: no cause could be assigned to a difference between strips. Two stones, or two strips a level, at least.`,
    );
  if (split && judged.sub === null && wish.sub.levels.length > 1)
    found.push(`No two patches are treated alike: nothing could be said of ${wish.sub.name}.`);
  if (wish.control === null)
    found.push('No control: levels can be compared with each other, not with nothing done.');
  if (wish.stones === 1) found.push('One stone: what holds on it may not hold on another.');
  else if (wish.stones === 2)
    found.push(
      'Two replicates are usually few: a difference must be large to be told from the luck of two stones.',
    );
  if (wish.wanted !== null) {
    const blind = [judged.whole, judged.sub, judged.perStone ?? null].some(
      (smallest) => smallest !== null && smallest > wish.wanted!,
    );
    if (blind)
      found.push(
        `A difference of ${wish.wanted} would more often be missed than this trial is worth: see the cheapest one that notices it.`,
      );
  }
  return found;
}
