import type { LeavingList, RackLine, Standing } from '../../records/bench.ts';
import type { LineStage } from '../../records/run.ts';

const rolled: readonly LineStage[] = [
  'roll-up',
  'trial-proofs',
  'second-powder',
  'second-roll-up',
  'proofs',
  'good-to-print',
  'edition',
];
const greasyCloths: readonly LineStage[] = [
  'washout',
  'base',
  'base-air',
  'second-washout',
  'second-base',
  'second-base-air',
];

/**
 * The shortest list that leaves everything safe: per stone what its state asks for, then the room. Common practice,
 * no source.
 * @param inHand the lines of stones that were worked on since they were last closed down
 * @param acidOut whether an acid etch was mixed
 */
export function leavingList(inHand: readonly RackLine[], acidOut: boolean): LeavingList {
  const stages = inHand.map(({ standing }) => standing.stage);
  const some = (of: readonly LineStage[]) => stages.some((stage) => stage !== null && of.includes(stage));
  const room = [
    ...(some(greasyCloths) || some(rolled) ? ['greasy and solvent cloths into the metal can, lid on'] : []),
    ...(acidOut ? ['acid capped and put away, far from cloths and solvent'] : []),
    ...(some(rolled) ? ['roller scraped and wrapped, slab covered'] : []),
  ];
  const stones = inHand
    .map(({ workId, stoneName, title, standing }) => ({ workId, stoneName, title, steps: stepsOf(standing) }))
    .filter(({ steps }) => steps.length > 0);
  return { stones, room };
}

function stepsOf({ stage, wet, gummed, inked }: Standing): string[] {
  if (stage === null || stage === 'grain' || stage === 'level' || stage === 'edges' || stage === 'regrain') {
    return [];
  }
  if (stage === 'draw' || stage === 'gum-border' || stage === 'powder')
    return ['cover it, nothing greasy near'];
  const steps: string[] = [];
  if (wet) steps.push('lift the etch, light before dark, buff it tight with fresh cloths');
  else if (gummed === 'unknown') steps.push('see whether it is gummed; if not, gum it and buff it tight');
  if (stage === 'washout' || stage === 'second-washout') {
    steps.push('rub in the base and buff it: washed out it must not wait');
  } else if (!wet && gummed === 'no') {
    steps.push(
      inked === 'yes' ? 'gum it, buff it tight' : 'ink or base it first if there is time, then gum it',
    );
  }
  return [...steps, 'cover it'];
}
