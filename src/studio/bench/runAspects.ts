import type { Contact, RunState, Spent, StageDone } from '../../records/bench.ts';
import type { LineStage } from '../../records/run.ts';
import type { Aspect } from './aspectChanges.ts';
import { lineRule } from './lineStages.ts';
import { corrections } from './stagesDone.ts';

/** The stages whose length is compared, most telling first: common practice, no source. */
const timedStages: readonly LineStage[] = [
  'first-rest',
  'washout',
  'base',
  'base-air',
  'base-rest',
  'roll-up',
  'second-rest',
  'second-washout',
  'second-base',
  'second-roll-up',
  'draw',
];
/** Stages of which it is told how often they were done. */
const countedStages: readonly LineStage[] = ['first-etch', 'washout', 'base', 'roll-up', 'second-etch'];

const notLogged = 'not logged on one side, which is not the same as not done';

/** What may differ between two runs as they went: contacts, gaps, times by stage, corrections and troubles. */
export function runAspects(state: RunState): readonly Aspect[] {
  return [
    ...contactAspects(state.contacts),
    ...timeAspects(state.stages),
    ...countAspects(state.stages),
    ...correctionAspects(state),
  ];
}

function contactAspects(contacts: readonly Contact[]): readonly Aspect[] {
  const seen = new Map<string, number>();
  return contacts.flatMap(({ name, stage, spent, longestGapSeconds }): Aspect[] => {
    const place = `${stage} ${name}`;
    const time = (seen.get(place) ?? 0) + 1;
    seen.set(place, time);
    const which = time === 1 ? name : `${name}, laid again (${time})`;
    return [
      {
        aspect: `contact ${place} ${time}`,
        name: `contact of ${which}${stage === 'first-etch' ? '' : ` in ${lineRule(stage).name}`}`,
        value: spent,
        rank: 2,
        caution: notLogged,
      },
      {
        aspect: `gap ${place} ${time}`,
        name: `longest time untouched of ${which}${stage === 'first-etch' ? '' : ` in ${lineRule(stage).name}`}`,
        value: longestGapSeconds === null ? null : gap(longestGapSeconds),
        rank: 3,
        caution: 'no moves were logged on one side',
      },
    ];
  });
}

function gap(seconds: number): Spent {
  return { seconds, low: Math.max(0, seconds - 2), high: seconds + 2, how: 'measured', oneClock: true };
}

/** The line has some stages twice, under one name. */
function stageWords(stage: LineStage): string {
  const { name } = lineRule(stage);
  return stage.startsWith('second-') && stage !== 'second-etch' ? `${name} after the second etch` : name;
}

function timeAspects(stages: readonly StageDone[]): readonly Aspect[] {
  return timedStages.map((stage, index) => {
    const told = stages.findLast((one) => one.stage === stage);
    return {
      aspect: `time ${stage}`,
      name: `${stageWords(stage)}: how long`,
      value: told?.state === 'skipped' ? 'left out' : (told?.spent ?? null),
      rank: 3 + index / 10,
      caution: notLogged,
    };
  });
}

function countAspects(stages: readonly StageDone[]): readonly Aspect[] {
  return countedStages.flatMap((stage): Aspect[] => {
    const often = stages.filter((one) => one.stage === stage && one.state !== 'skipped').length;
    if (often === 0) return [];
    const name = `${stageWords(stage)}: how often`;
    return [{ aspect: `often ${stage}`, name, value: String(often), rank: 4.6, caution: notLogged }];
  });
}

/** Corrections and troubles are told only where they were: a log without any says nothing about how it went. */
function correctionAspects({ stages, facts }: RunState): readonly Aspect[] {
  const made = corrections.flatMap((stage): Aspect[] => {
    const often = stages.filter((one) => one.stage === stage).length;
    if (often === 0) return [];
    return [
      {
        aspect: `correction ${stage}`,
        name: lineRule(stage).name,
        value: often === 1 ? 'logged once' : `logged ${often} times`,
        rank: 3,
        caution: notLogged,
      },
    ];
  });
  const troubles = facts.filter(({ fact }) => fact === 'trouble').map(({ words }) => words);
  if (troubles.length === 0) return made;
  const value = [...new Set(troubles)].join('; ');
  return [
    ...made,
    { aspect: 'trouble', name: 'trouble', value, rank: 2.5, caution: 'none was logged on one side' },
  ];
}
