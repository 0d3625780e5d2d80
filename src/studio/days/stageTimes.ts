import type { HandsTime } from '../../records/dayPlan.ts';
import type { LineStage } from '../../records/run.ts';
import type { RoomTime } from '../../records/studio.ts';
import { lineRule } from '../bench/lineStages.ts';

/** What the length of a stage depends on. */
export interface TimedWork {
  /** The stone's face. */
  readonly faceCm2: number;
  /** From the first touch to the last by the newest plan's schedule, and whose; null without one. */
  readonly firstEtch: { readonly seconds: number; readonly people: 1 | 2 } | null;
  /** The work's own, before the room's own. */
  readonly times: readonly RoomTime[];
}

export interface StageTime {
  readonly hands: HandsTime;
  readonly people: 1 | 2;
  /** May be broken off in the evening and gone on with. */
  readonly mayBreak: boolean;
}

const varies = 'from memory, varies much: put in what this room takes';

/** Minutes of hands with laying out and clearing away: from memory, varies much. */
const starting: Readonly<Partial<Record<LineStage, readonly [low: number, high: number]>>> = {
  level: [15, 40],
  edges: [10, 30],
  'gum-border': [10, 20],
  powder: [5, 10],
  'roll-up': [20, 45],
  'trial-proofs': [30, 60],
  'second-powder': [10, 20],
  'second-etch': [30, 60],
  'second-etch-quick': [20, 40],
  'second-roll-up': [20, 45],
  water: [2, 5],
  'second-water': [2, 5],
  proofs: [60, 180],
  'good-to-print': [20, 40],
  'close-down': [20, 40],
  hone: [10, 30],
  scrape: [10, 30],
  'spot-etch': [15, 40],
  'counter-etch': [20, 40],
};

/** Minutes of graining for 100 cm² of stone, all grits together: from memory, varies much. */
const grainPer100Cm2 = [3, 8] as const;
/** Minutes before and after the first etch's clock: mixing, laying out; buffing, clearing away. From memory. */
const aroundEtch = [25, 50] as const;
/** Minutes of laying out and of cloths around a stage that the line itself times in minutes. From memory. */
const aroundStage = [3, 8] as const;

const breakable: readonly LineStage[] = ['level', 'grain', 'draw', 'redraw', 'edition', 'regrain'];

/**
 * How many must be there: signatures of two; one inks and one sponges and feeds an edition (common practice, no
 * source). A stone that one can't lift is another matter: see the lifting of the stone.
 */
const twoPeople: readonly LineStage[] = ['good-to-print', 'edition'];

/** How long a stage takes whose hands, and where that comes from; what nobody knows is null. */
export function stageTime(stage: LineStage, work: TimedWork): StageTime {
  const mayBreak = breakable.includes(stage);
  const typed = work.times.find((one) => one.stage === stage);
  if (typed) {
    const { lowMinutes, highMinutes, people } = typed;
    return { hands: { lowMinutes, highMinutes, basis: 'typed', note: 'as typed here' }, people, mayBreak };
  }
  const people = twoPeople.includes(stage) ? 2 : 1;
  if (stage === 'first-etch' && work.firstEtch) return plannedEtch(work.firstEtch);
  return { hands: startingTime(stage, work.faceCm2), people, mayBreak };
}

function plannedEtch({ seconds, people }: NonNullable<TimedWork['firstEtch']>): StageTime {
  const clock = seconds / 60;
  const hands: HandsTime = {
    lowMinutes: Math.round(clock + aroundEtch[0]),
    highMinutes: Math.ceil(clock + aroundEtch[1]),
    basis: 'memory',
    note: `${Math.ceil(clock)} min by the etch plan, ${aroundEtch.join(' to ')} min around it from memory`,
  };
  return { hands, people, mayBreak: false };
}

function startingTime(stage: LineStage, faceCm2: number): HandsTime {
  const from = ([low, high]: readonly [number, number], note: string): HandsTime => ({
    lowMinutes: low,
    highMinutes: high,
    basis: 'memory',
    note,
  });
  if (stage === 'grain' || stage === 'regrain') {
    const [low, high] = grainPer100Cm2.map((minutes) => Math.ceil((minutes * faceCm2) / 100));
    const face = `${Math.round(faceCm2)} cm²`;
    return from([low!, high!], `${grainPer100Cm2.join(' to ')} min for each 100 cm² of ${face}; ${varies}`);
  }
  if (stage === 'first-etch') return from([40, 90], `not planned yet; ${varies}`);
  const known = starting[stage];
  if (known) return from(known, varies);
  const { expected, waiting } = lineRule(stage);
  if (expected?.lowSeconds != null && expected.highSeconds != null) {
    const { lowSeconds, highSeconds, basis, note } = expected;
    const minutes = [Math.floor(lowSeconds / 60), Math.ceil(highSeconds / 60)] as const;
    if (waiting) return { lowMinutes: minutes[0], highMinutes: minutes[1], basis, note };
    const around: readonly [number, number] = [minutes[0] + aroundStage[0], minutes[1] + aroundStage[1]];
    return from(around, `${note}; ${aroundStage.join(' to ')} min around it from memory`);
  }
  return {
    lowMinutes: null,
    highMinutes: null,
    basis: 'typed',
    note: stage === 'draw' ? 'only the one who draws can say' : 'nobody has said',
  };
}
