import { ok, type Result } from '../../../foundation/result.ts';
import type { CheapestTrial, TrialDesign, TrialPower, TrialWish } from '../../../records/trialDesign.ts';
import { type TrialLayout, trialLayout } from './trialLayout.ts';
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
  for (let stones = 1; stones <= most.stones; stones++)
    for (let stripRepeats = 1; stripRepeats <= (wish.whole ? most.stripRepeats : 1); stripRepeats++)
      for (let patchRepeats = 1; patchRepeats <= most.patchRepeats; patchRepeats++) {
        const size = { ...wish, stones, stripRepeats, patchRepeats };
        if (!notices(size, wanted) || !trialLayout({ ...size, patchMm: null }).ok) continue;
        const perStone =
          (wish.whole?.levels.length ?? 1) * stripRepeats * wish.sub.levels.length * patchRepeats;
        return { stones, stripRepeats, patchRepeats, patches: stones * perStone };
      }
  return 'none';
}

function notices(wish: TrialWish, wanted: number): boolean {
  const { whole, sub } = trialPower(wish, 'middle', wish.scatter ?? usualScatter.middle);
  const asked = [...(wish.whole ? [whole] : []), ...(wish.sub.levels.length > 1 ? [sub] : [])];
  return asked.every((smallest) => smallest !== null && smallest <= wanted);
}

function warningsOf(wish: TrialWish, power: readonly TrialPower[]): string[] {
  const judged = power[wish.scatter ? 0 : 1]!;
  const found: string[] = [];
  if (wish.whole && judged.whole === null)
    found.push(
      `Every level of ${wish.whole.name} is given to one strip only: no cause could be assigned to a difference between strips. Two stones, or two strips a level, at least.`,
    );
  if (judged.sub === null && wish.sub.levels.length > 1)
    found.push(`No two patches are treated alike: nothing could be said of ${wish.sub.name}.`);
  if (wish.control === null)
    found.push('No control: levels can be compared with each other, not with nothing done.');
  if (wish.stones === 1) found.push('One stone: what holds on it may not hold on another.');
  else if (wish.stones === 2)
    found.push(
      'Two replicates are usually few: a difference must be large to be told from the luck of two stones.',
    );
  if (wish.wanted !== null) {
    const blind = [judged.whole, judged.sub].some((smallest) => smallest !== null && smallest > wish.wanted!);
    if (blind)
      found.push(
        `A difference of ${wish.wanted} would more often be missed than this trial is worth: see the cheapest one that notices it.`,
      );
  }
  return found;
}
