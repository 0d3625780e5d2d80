import { ok, type Result } from '../../../foundation/result.ts';
import type { CheapestTrial, TrialDesign, TrialPower, TrialSpec } from '../../../records/trialDesign.ts';
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
export function designTrial(spec: TrialSpec): Result<DesignedTrial> {
  const layout = trialLayout(spec);
  if (!layout.ok) return layout;
  const { patches, patchMm, list } = layout.value;
  const power = powersOf(spec);
  return ok({
    design: {
      schema: 'stonetone/trial-design/1',
      spec,
      patchMm,
      patches,
      power,
      cheapest: spec.wanted === null ? null : cheapestFor(spec, spec.wanted),
      warnings: warningsOf(spec, power),
    },
    list,
  });
}

function powersOf(spec: TrialSpec): TrialPower[] {
  const own = spec.scatter ? [trialPower(spec, 'this room', spec.scatter)] : [];
  return [
    ...own,
    ...(['low', 'middle', 'high'] as const).map((of) => trialPower(spec, of, usualScatter[of])),
  ];
}

/** Stones cost a day each, strips an etch, patches a minute: the fewest stones first, then strips, then patches. */
function cheapestFor(spec: TrialSpec, wanted: number): CheapestTrial | 'none' {
  for (let stones = 1; stones <= most.stones; stones++)
    for (let stripRepeats = 1; stripRepeats <= (spec.whole ? most.stripRepeats : 1); stripRepeats++)
      for (let patchRepeats = 1; patchRepeats <= most.patchRepeats; patchRepeats++) {
        const size = { ...spec, stones, stripRepeats, patchRepeats };
        if (!notices(size, wanted) || !trialLayout({ ...size, patchMm: null }).ok) continue;
        const perStone =
          (spec.whole?.levels.length ?? 1) * stripRepeats * spec.sub.levels.length * patchRepeats;
        return { stones, stripRepeats, patchRepeats, patches: stones * perStone };
      }
  return 'none';
}

function notices(spec: TrialSpec, wanted: number): boolean {
  const { whole, sub } = trialPower(spec, 'middle', spec.scatter ?? usualScatter.middle);
  const asked = [...(spec.whole ? [whole] : []), ...(spec.sub.levels.length > 1 ? [sub] : [])];
  return asked.every((smallest) => smallest !== null && smallest <= wanted);
}

function warningsOf(spec: TrialSpec, power: readonly TrialPower[]): string[] {
  const judged = power[spec.scatter ? 0 : 1]!;
  const found: string[] = [];
  if (spec.whole && judged.whole === null)
    found.push(
      `Every level of ${spec.whole.name} is given to one strip only: no cause could be assigned to a difference between strips. Two stones, or two strips a level, at least.`,
    );
  if (judged.sub === null && spec.sub.levels.length > 1)
    found.push(`No two patches are treated alike: nothing could be said of ${spec.sub.name}.`);
  if (spec.control === null)
    found.push('No control: levels can be compared with each other, not with nothing done.');
  if (spec.stones === 1) found.push('One stone: what holds on it may not hold on another.');
  else if (spec.stones === 2)
    found.push(
      'Two replicates are usually few: a difference must be large to be told from the luck of two stones.',
    );
  if (spec.wanted !== null) {
    const blind = [judged.whole, judged.sub].some((smallest) => smallest !== null && smallest > spec.wanted!);
    if (blind)
      found.push(
        `A difference of ${spec.wanted} would more often be missed than this trial is worth: see the cheapest one that notices it.`,
      );
  }
  return found;
}
