import type { KeptStone } from '../../records/stoneEntry.ts';
import { type Work, workStages } from '../../records/work.ts';
import type { Zone } from '../../records/zone.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { mediumOf } from '../etch/mediumCatalogue.ts';
import { factsBefore } from '../stones/workHistory.ts';
import type { Aspect } from './aspectChanges.ts';

/** What may differ between two works at a moment. */
export interface WorkLookedAt {
  readonly work: Work;
  readonly stone: KeptStone;
  /** The drawing as it was then; null where nobody kept what it was. */
  readonly zones: readonly Zone[] | null;
  /** The moment, ISO 8601: what was grained later does not count. */
  readonly at: string;
}

/** The stone, the drawing and what is told of the past. */
export function workAspects({ work, stone, zones, at }: WorkLookedAt): readonly Aspect[] {
  const grit = stone.graining.findLast((entry) => Date.parse(entry.at) <= Date.parse(at))?.grit ?? null;
  return [
    ...drawingAspects(zones),
    { aspect: 'stone', name: 'stone', value: stone.name, rank: 6 },
    { aspect: 'stone colour', name: 'colour of the stone', value: stone.colour || null, rank: 7 },
    { aspect: 'last grit', name: 'last grit', value: grit === null ? null : String(grit), rank: 5 },
    // nobody logs these here, and they are among the first that a printer asks for
    { aspect: 'room', name: 'warmth and damp of the room', value: null, rank: 5, caution: 'not logged here' },
    ...pastAspects(work),
  ];
}

function drawingAspects(zones: readonly Zone[] | null): readonly Aspect[] {
  if (zones === null || zones.length === 0) {
    const caution =
      zones === null ? 'the drawing was changed since, and as it was is not kept' : 'no zone is drawn';
    return [{ aspect: 'drawing', name: 'the drawing', value: null, rank: 4, caution }];
  }
  const listed = { list: 'zones', absent: 'no such zone' };
  return zones.flatMap(({ name, medium, deposit, intention, polygonMm }): Aspect[] => [
    {
      aspect: `zone ${name}`,
      name: `medium of ${name}`,
      value: [mediumOf(medium)?.name ?? medium, deposit, intention?.replaceAll('-', ' ')]
        .filter(Boolean)
        .join(', '),
      rank: 4,
      listed,
    },
    {
      aspect: `area ${name}`,
      name: `area of ${name}`,
      value: `${(Math.abs(signedArea(polygonMm)) / 100).toFixed(0)} cm²`,
      rank: 6,
      listed,
    },
  ]);
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
    caution: 'told of the time before it was entered here, on one side only',
  }));
}
