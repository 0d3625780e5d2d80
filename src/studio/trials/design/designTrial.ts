import { ok, type Result } from '../../../foundation/result.ts';
import type { TrialDesign, TrialPower, TrialWish } from '../../../records/trialDesign.ts';
import { cheapestLayouts } from './cheapestLayouts.ts';
import { combinationsOf, rowsOf } from './drawnTreatments.ts';
import { auditLayout } from './trialAudit.ts';
import { type TrialLayout, trialLayout } from './trialLayout.ts';
import { type Noticing, noticingBySimulation, trialPower, usualScatter } from './trialPower.ts';

/** A trial with the list of who gets what, which whoever reads must not see before reading. */
export interface DesignedTrial {
  readonly design: TrialDesign;
  readonly list: TrialLayout['list'];
}

/** Share of the way once the trial's own power is known, the cheapest layouts being the rest. */
const ownPower = 0.2;

/**
 * Lays a trial out, says what it could notice, and which trials would be the cheapest that notice what is wanted.
 * @param progress told from 0 to 1.
 * @returns `trial-does-not-fit` where its patches don't go on the stone.
 */
export function designTrial(
  wish: TrialWish,
  progress: (share: number) => void = () => {},
): Result<DesignedTrial> {
  const layout = trialLayout(wish);
  if (!layout.ok) return layout;
  const { patches, patchMm, list } = layout.value;
  const noticing = noticingBySimulation();
  const power = powersOf(wish, noticing);
  progress(ownPower);
  const layouts =
    wish.wanted === null
      ? null
      : cheapestLayouts(wish, wish.wanted, noticing, (share) => progress(ownPower + (1 - ownPower) * share));
  return ok({
    design: {
      schema: 'stonetone/trial-design/2',
      wish,
      patchMm,
      patches,
      power,
      layouts,
      warnings: warningsOf(wish, power),
      audit: auditLayout(wish, layout.value),
    },
    list,
  });
}

function powersOf(wish: TrialWish, noticing: Noticing): TrialPower[] {
  const own = wish.scatter ? [trialPower(wish, 'this room', wish.scatter, noticing)] : [];
  return [
    ...own,
    ...(['low', 'middle', 'high'] as const).map((of) => trialPower(wish, of, usualScatter[of], noticing)),
  ];
}

function warningsOf(wish: TrialWish, power: readonly TrialPower[]): string[] {
  const judged = power[wish.scatter ? 0 : 1]!;
  const found: string[] = [];
  const split = (wish.layout ?? 'split-plot') === 'split-plot';
  if (wish.perStone && judged.perStone === null)
    found.push(
      `Whatever is tried of ${wish.perStone.name} is given to one stone only: no cause could be assigned to a difference between stones. At least two stones for each.`,
    );
  if (!split && judged.sub === null)
    found.push(
      'No combination is repeated: nothing could be said of anything that is tried. Another stone, block or row at least.',
    );
  if (wish.layout === 'row-column' && rowsOf(wish) < combinationsOf(wish).length)
    found.push(
      `${rowsOf(wish)} rows of ${combinationsOf(wish).length} combinations: columns are not complete, which costs some sharpness; ${combinationsOf(wish).length} rows make a full square.`,
    );
  if (split && wish.whole && judged.whole === null)
    found.push(
      `Whatever is tried of ${wish.whole.name} is given to one strip only: no cause could be assigned to a difference between strips. At least two stones, or two strips, for each.`,
    );
  if (split && judged.sub === null && wish.sub.levels.length > 1)
    found.push(`No two patches are treated alike: nothing could be said of ${wish.sub.name}.`);
  if (wish.control === null)
    found.push('No control: what is tried can be compared with one another, not with nothing done.');
  if (wish.stones === 1) found.push('One stone: what holds on it may not hold on another.');
  else if (wish.stones === 2)
    found.push(
      'Two stones alike are usually few: a difference must be large to be told from the luck of two stones.',
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
