import type { Standing } from '../../records/bench.ts';
import type { LeavingList, LeavingStep, RackLine } from '../../records/rack.ts';
import type { LineStage } from '../../records/run.ts';
import { gumToSee } from './gumToSee.ts';

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
const bare: readonly LineStage[] = ['grain', 'level', 'edges', 'regrain'];
const drawnOn: readonly LineStage[] = ['draw', 'gum-border', 'powder'];

/** What the room asks for, as certain or as nobody logged it. */
const roomSteps = {
  cloths: 'greasy and solvent cloths into the metal can, lid on',
  acid: 'acid capped and put away, far from cloths and solvent',
  roller: 'roller scraped and wrapped, slab covered',
} as const;

const ifToday: readonly string[] = [
  `if you inked or washed out today: ${roomSteps.cloths}`,
  `if you etched with acid today: ${roomSteps.acid}`,
  `if you inked today: ${roomSteps.roller}`,
];

/**
 * The shortest list that leaves everything safe: per stone what its state asks for, then the room. Where no log tells
 * what was done in the room, it is asked. Common practice, no source.
 * @param inHand the lines of stones that were worked on since they were last closed down
 * @param unsure the lines of other stones of which nobody knows whether they are gummed
 * @param acidOut whether an acid etch was mixed
 */
export function leavingList(
  inHand: readonly RackLine[],
  unsure: readonly RackLine[],
  acidOut: boolean,
): LeavingList {
  const stages = inHand.map(({ standing }) => standing.stage);
  const some = (of: readonly LineStage[]) => stages.some((stage) => stage !== null && of.includes(stage));
  const sure = [
    ...(some(greasyCloths) || some(rolled) ? [roomSteps.cloths] : []),
    ...(acidOut ? [roomSteps.acid] : []),
    ...(some(rolled) ? [roomSteps.roller] : []),
  ];
  const stepped = (lines: readonly RackLine[]) =>
    lines
      .map(({ workId, runId, stoneName, title, standing }) => ({
        workId,
        runId,
        stoneName,
        title,
        steps: stepsOf(standing),
      }))
      .filter(({ steps }) => steps.length > 0);
  const worked = stepped(inHand);
  return { stones: [...worked, ...stepped(unsure)], room: worked.length === 0 ? ifToday : sure };
}

const untold = (words: string): LeavingStep => ({ words, logs: null });
const gums = (words: string): LeavingStep => ({
  words,
  logs: { kind: 'gummed', payload: { words: 'before leaving' } },
});
const ends = (words: string, stage: LineStage): LeavingStep => ({
  words,
  logs: { kind: 'stage-ended', payload: { stage } },
});

function stepsOf(standing: Standing): LeavingStep[] {
  const { stage } = standing;
  if (stage === null) return [];
  if (bare.includes(stage)) return looks(standing, 'see whether it is gummed');
  if (drawnOn.includes(stage)) {
    return [...looks(standing, 'see whether it is gummed'), untold('cover it, nothing greasy near')];
  }
  return [...safeSteps(stage, standing), untold('cover it')];
}

function safeSteps(stage: LineStage, standing: Standing): LeavingStep[] {
  const { wet, gummed, inked } = standing;
  if (wet) return [ends('lift the etch, light before dark, buff it tight with fresh cloths', stage)];
  if (stage === 'washout' || stage === 'second-washout') {
    const base = stage === 'washout' ? 'base' : 'second-base';
    return [
      ...looks(standing, 'see whether the gum is whole'),
      ends('rub in the base and buff it: washed out it must not wait', base),
    ];
  }
  if (gumToSee(standing)) return [gums('see whether it is gummed; if not, gum it and buff it tight')];
  if (gummed === 'yes') return [];
  return [
    gums(inked === 'yes' ? 'gum it, buff it tight' : 'ink or base it first if there is time, then gum it'),
  ];
}

/** Where gum is not what it needs next, only the look. */
function looks(standing: Standing, words: string): LeavingStep[] {
  return gumToSee(standing) ? [untold(words)] : [];
}
