import {
  type CheapestTrial,
  type TrialScatter,
  type TrialWish,
  trialLayouts,
} from '../../../records/trialDesign.ts';
import { rowsOf } from './drawnTreatments.ts';
import { errorsOf } from './stratumErrors.ts';
import { trialCost } from './trialCost.ts';
import { fitsOnStone } from './trialLayout.ts';
import { type Noticing, usualScatter, wantedShare } from './trialPower.ts';

/** Larger trials than these are not looked for. */
const most = { stones: 8, stripRepeats: 2, patchRepeats: 4 };
/** Two levels, scatter known: 1.96 standard errors for the claim and 0.84 for 8 times in 10. Less is never noticed. */
const leastErrors = 2.7;

/**
 * Of every layout the cheapest trial that notices the wanted difference 8 times in 10 at this room's own scatter, middling where that
 * isn't known; the cheapest first. A layout of which none of up to 8 stones would do, or would fit, is left out.
 * @param progress told from 0 to 1.
 */
export function cheapestLayouts(
  wish: TrialWish,
  wanted: number,
  noticing: Noticing,
  progress: (share: number) => void,
): CheapestTrial[] {
  const kinds = layoutsFor(wish);
  const found = kinds.flatMap((kind, index) => {
    const cheapest = sizesOf({ ...wish, ...kind, patchMm: null })
      .map((size) => ({ size, cost: trialCost(size) }))
      .sort((a, b) => a.cost.minutes - b.cost.minutes || a.size.stones - b.size.stones)
      .find(({ size }) => fitsOnStone(size) && notices(size, wanted, noticing));
    progress((index + 1) / kinds.length);
    if (!cheapest) return [];
    const { size, cost } = cheapest;
    const scatters: (readonly [CheapestTrial['chances'][number]['of'], TrialScatter])[] = [
      ...(wish.scatter ? [['this room', wish.scatter] as const] : []),
      ...(['low', 'middle', 'high'] as const).map((of) => [of, usualScatter[of]] as const),
    ];
    return [
      {
        layout: kind.layout,
        blocks: kind.layout === 'blocked' ? kind.blocks : null,
        stones: size.stones,
        stripRepeats: size.stripRepeats,
        patchRepeats: size.patchRepeats,
        ...cost,
        chances: scatters.map(([of, scatter]) => ({
          of,
          chance: leastChance(size, scatter, wanted, noticing),
        })),
      },
    ];
  });
  return found.sort((a, b) => a.minutes - b.minutes || a.stones - b.stones);
}

type Kind = Required<Pick<TrialWish, 'layout' | 'blocks'>>;

/** A stone is parted into blocks as the wish has it. */
function layoutsFor({ whole, sub, blocks = 'head-tail' }: TrialWish): Kind[] {
  const combinations = (whole?.levels.length ?? 1) * sub.levels.length;
  return trialLayouts
    .filter((layout) => {
      // Without a treatment of strips a split plot is one block a stone.
      if (layout === 'split-plot') return whole !== null;
      return layout === 'blocked' || combinations > 1;
    })
    .map((layout) => ({ layout, blocks }));
}

function sizesOf(wish: TrialWish): TrialWish[] {
  const strips = wish.whole && wish.layout === 'split-plot' ? most.stripRepeats : 1;
  // Whole stones are shared out evenly among what is given to whole stones.
  const step = wish.perStone?.levels.length ?? 1;
  const sizes: TrialWish[] = [];
  for (let stones = step; stones <= most.stones; stones += step)
    for (let stripRepeats = 1; stripRepeats <= strips; stripRepeats++)
      for (let patchRepeats = 1; patchRepeats <= most.patchRepeats; patchRepeats++) {
        const size = { ...wish, stones, stripRepeats, patchRepeats };
        // Rows of a row-column trial are never fewer nor more than these.
        if (size.layout === 'row-column' && rowsOf(size) !== patchRepeats) continue;
        sizes.push(size);
      }
  return sizes;
}

function notices(wish: TrialWish, wanted: number, noticing: Noticing): boolean {
  const scatter = wish.scatter ?? usualScatter.middle;
  const errors = errorsOf(wish, scatter);
  const tight = asked(wish).some((of) => wanted < leastErrors * Math.sqrt(errors[of].variance));
  return !tight && leastChance(wish, scatter, wanted, noticing) >= wantedShare;
}

/** How often the wanted difference is noticed in the treatment that notices it worst; 0 where one has no replicate. */
function leastChance(wish: TrialWish, scatter: TrialScatter, wanted: number, noticing: Noticing): number {
  const errors = errorsOf(wish, scatter);
  return Math.min(
    1,
    ...asked(wish).map((of) => noticing.chance(wish[of]!.levels, wish.control, errors[of], wanted)),
  );
}

function asked(wish: TrialWish) {
  return (['whole', 'sub', 'perStone'] as const).filter((of) => (wish[of]?.levels.length ?? 1) > 1);
}
