import type { RunState, Spent } from '../../records/bench.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { LineStage, RunTool } from '../../records/run.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import { type Work, workStages } from '../../records/work.ts';
import { factsBefore } from '../stones/workHistory.ts';
import type { Aspect } from './aspectChanges.ts';
import { lineRule } from './lineStages.ts';

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
const tools: readonly RunTool[] = ['ink', 'batch', 'roller', 'press', 'paper', 'cloth'];

/** What may differ between two works: the stone, the drawing and what is told of the past. */
export function workAspects(work: Work, stone: KeptStone): readonly Aspect[] {
  const grit = stone.graining.at(-1)?.grit ?? null;
  return [
    ...work.zones.map((zone) => ({
      aspect: `zone ${zone.name}`,
      name: `medium of ${zone.name}`,
      value: [zone.medium, zone.deposit, zone.intention].filter(Boolean).join(', '),
      rank: 4,
    })),
    { aspect: 'stone', name: 'stone', value: stone.name, rank: 6 },
    { aspect: 'stone colour', name: 'colour of the stone', value: stone.colour || null, rank: 7 },
    { aspect: 'last grit', name: 'last grit', value: grit === null ? null : String(grit), rank: 5 },
    ...pastAspects(work),
  ];
}

function pastAspects({ origin, stage }: Work): readonly Aspect[] {
  // what was done here is told by runs; only what is told of before can be compared in words
  if (origin.kind === 'new') return [];
  const reached = workStages.indexOf(origin.stage) < workStages.indexOf(stage) ? stage : origin.stage;
  return factsBefore(reached).map((fact) => ({
    aspect: `past ${fact}`,
    name: fact.replaceAll('-', ' '),
    value: origin.history.find((told) => told.fact === fact)?.value ?? null,
    rank: 8,
  }));
}

/** What may differ between two runs: the etch as planned and as it went, the waits, and what was picked. */
export function runAspects(state: RunState, plan: KeptPlan | null): readonly Aspect[] {
  return [...planAspects(plan), ...contactAspects(state), ...stageAspects(state), ...toolAspects(state)];
}

function planAspects(plan: KeptPlan | null): readonly Aspect[] {
  const tannic = plan?.request.tannic ?? null;
  const planned = (aspect: string, rank: number, value: string | null): Aspect => ({
    aspect,
    name: aspect,
    rank,
    value,
  });
  const number = (value: number | null | undefined, unit: string) =>
    value === null || value === undefined ? null : `${value} ${unit}`.trim();
  return [
    planned('etch table', 1, plan && `${plan.table.name}, version ${plan.table.version}`),
    planned('tannic solution', 2, number(tannic?.gramsPerLitre, 'g/l')),
    planned('pH of the tannic solution', 2, number(tannic?.pH, '')),
    planned('depth of the etch', 3, number(plan?.request.filmMm, 'mm')),
    planned('people', 5, number(plan?.request.people, '')),
    ...(plan?.plan.zones ?? []).map((zone) => planned(`etch of ${zone.name}`, 1, zone.etch?.name ?? null)),
  ];
}

function contactAspects({ contacts }: RunState): readonly Aspect[] {
  return contacts.flatMap(({ name, stage, spent, longestGapSeconds }): Aspect[] => [
    { aspect: `contact ${stage} ${name}`, name: `contact of ${name}`, value: spent, rank: 2 },
    {
      aspect: `gap ${stage} ${name}`,
      name: `longest time untouched of ${name}`,
      value: longestGapSeconds === null ? null : gap(longestGapSeconds),
      rank: 3,
    },
  ]);
}

function gap(seconds: number): Spent {
  return { seconds, low: Math.max(0, seconds - 2), high: seconds + 2, how: 'measured', oneClock: true };
}

function stageAspects({ stages }: RunState): readonly Aspect[] {
  return timedStages.map((stage, index) => ({
    aspect: `time ${stage}`,
    name: `time of ${lineRule(stage).name}`,
    value: stages.findLast((one) => one.stage === stage)?.spent ?? null,
    rank: 3 + index / 10,
  }));
}

function toolAspects({ picked }: RunState): readonly Aspect[] {
  return tools.map((tool, index) => ({
    aspect: `tool ${tool}`,
    name: tool,
    value: picked.find((one) => one.tool === tool)?.words ?? null,
    rank: 4 + index / 10,
  }));
}
