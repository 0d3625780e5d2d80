import type { Measured } from '../../foundation/measured.ts';
import {
  type PullReading,
  type SeriesAnswer,
  type SeriesTone,
  seriesTones,
} from '../../records/proofSeries.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { RoomNoise, SeriesPull, WorkSeries } from '../../records/workSeries.ts';
import { answerSeries } from './answerSeries.ts';
import { sameAge } from './comparablePulls.ts';
import { goodToPrint, type PullsReadBy, pullsReadBy } from './goodToPrint.ts';
import { pullPaper } from './pullPaper.ts';
import { type PullGroup, pullGroups } from './pullReadings.ts';
import { pullWords } from './seriesWords.ts';

/** σ of a tone told by eye from the hatch scale: our rule. */
export const eyeSigma = 0.1;

/** All that a series is judged from. */
export interface SeriesInput {
  readonly workId: string;
  readonly tolerance: number;
  readonly noise: RoomNoise;
  /** In use, in any order. */
  readonly pulls: readonly Pull[];
  /** What was read from each measured photograph, by its id. */
  readonly tonesOf: ReadonlyMap<string, PullTones>;
  /** Tones that nothing stands for on this stone; none unless told. */
  readonly unplaced?: readonly SeriesTone[];
}

/**
 * Whether the pulls of a work have settled. Papers and ages are never pooled, nor are tones told by eye with those of
 * photographs: the way in which the latest read pull was read decides which are compared.
 */
export function workSeries(input: SeriesInput): WorkSeries {
  const { tolerance, noise, workId } = input;
  const laid = laidOut(input);
  const read = laid.filter(({ how }) => how !== 'unread');
  const how = read.at(-1)?.how ?? 'unread';
  const alike = read.filter((pull) => pull.how === how);
  const readings = alike.map(readingOf);
  const sigma = how === 'eye' ? eyeSigma : (noise.sigma?.value ?? null);
  const judged =
    sigma === null
      ? unknownNoise(noise)
      : answerSeries({ noise: { tone: sigma }, tolerance, pulls: readings }, false);
  const answer = { ...judged, warnings: [...otherWay(read, alike), ...judged.warnings] };
  const signed = { artist: true, printer: true };
  return {
    workId,
    tolerance,
    noise,
    sigma,
    answer,
    pulls: laid.map((pull) => ({ ...pull, compared: answer.compared.includes(pull.number) })),
    goodToPrint: goodToPrint(readings, tolerance, signed, pullsReadBy(how, sigma), input.unplaced),
    readAgain: readAgain(answer, alike),
  };
}

function laidOut({ pulls, tonesOf }: SeriesInput): readonly SeriesPull[] {
  const ordered = [...pulls].sort((a, b) => a.number - b.number);
  const grouped = ordered.map((pull) => ({ pull, groups: pullGroups(pull, tonesOf) }));
  const age = ageComparedAt(grouped.map(({ groups }) => groups));
  return grouped.map(({ pull, groups }) => {
    const group = groups.find((one) => age !== undefined && sameAge(one.age, age)) ?? groups[0];
    const common = {
      id: pull.id,
      number: pull.number,
      paper: paperWords(pull),
      openFaults: pull.faults.filter(({ closed }) => closed === null).map(({ words }) => words),
      compared: false,
    };
    if (group)
      return { ...common, age: group.age, how: 'camera', readings: group.each.length, tones: group.tones };
    if (pull.eye)
      return { ...common, age: pull.eye.ageMinutes, how: 'eye', readings: 0, tones: eyeTones(pull.eye) };
    return {
      ...common,
      age: null,
      how: 'unread',
      readings: 0,
      tones: { lights: null, middles: null, darks: null },
    };
  });
}

/** Paper printed damp and dry does not take ink alike: they are two papers here. */
export function paperWords(pull: Pick<Pull, 'paper' | 'damp'>): string {
  const { damp } = pull;
  return damp === null ? pullPaper(pull) : `${pullPaper(pull)}, ${damp ? 'damp' : 'dry'}`;
}

/** Of the ages at which the latest measured pull was read, the one that most other pulls share. */
function ageComparedAt(all: readonly (readonly PullGroup[])[]): number | null | undefined {
  const latest = all.findLast((groups) => groups.length > 0);
  if (!latest) return undefined;
  const shared = (age: number | null) =>
    all.filter((groups) => groups.some((group) => sameAge(group.age, age))).length;
  return latest.reduce((best, group) => (shared(group.age) > shared(best.age) ? group : best)).age;
}

function eyeTones(eye: NonNullable<Pull['eye']>): SeriesPull['tones'] {
  const half = 1.96 * eyeSigma;
  const told = (value: number | null): Measured | null =>
    value === null
      ? null
      : {
          value,
          low: Math.max(0, value - half),
          high: Math.min(1, value + half),
          basis: 'typed',
          warnings: ['Told by eye from the hatch scale.'],
        };
  return { lights: told(eye.lights), middles: told(eye.middles), darks: told(eye.darks) };
}

function readingOf(pull: SeriesPull): PullReading {
  const value = (tone: SeriesTone) => pull.tones[tone]?.value ?? null;
  const [lights, middles, darks] = seriesTones.map(value) as [number | null, number | null, number | null];
  return {
    n: pull.number,
    paper: pull.paper,
    age: pull.age,
    lights,
    middles,
    darks,
    faults: pull.openFaults,
  };
}

function unknownNoise(noise: RoomNoise): SeriesAnswer {
  return {
    steady: 'unknown',
    state: 'cannot-tell',
    since: null,
    reason:
      `Can’t tell: how far two readings of one sheet differ is not known in this room yet. ${noise.ask ?? ''}`.trim(),
    plateau: null,
    warnings: [],
    compared: [],
    tones: [],
  };
}

function otherWay(read: readonly SeriesPull[], alike: readonly SeriesPull[]): string[] {
  const others = read.filter((pull) => !alike.includes(pull));
  const [first] = others;
  if (!first) return [];
  const way = first.how === 'eye' ? 'told by eye' : 'read by photograph';
  return [
    `${pullWords(others.map(({ number }) => number))} left out, ${way}: it is never mixed with ${first.how === 'eye' ? 'readings by photograph' : 'tones told by eye'}.`,
  ];
}

/** How the pull of that number was read, and how sure one such reading is. */
export function approvalReading(
  { pulls, noise }: Pick<WorkSeries, 'pulls' | 'noise'>,
  number: number,
): PullsReadBy {
  const how = pulls.find((pull) => pull.number === number)?.how ?? 'unread';
  return pullsReadBy(how, how === 'eye' ? eyeSigma : (noise.sigma?.value ?? null));
}

/** The readings that good to print of one pull rests on: those up to it that were read as it was; none where it wasn't read. */
export function approvalReadings(
  { pulls }: Pick<WorkSeries, 'pulls'>,
  number: number,
): readonly PullReading[] {
  const named = pulls.find((pull) => pull.number === number);
  if (!named || named.how === 'unread') return [];
  return pulls.filter((pull) => pull.number <= number && pull.how === named.how).map(readingOf);
}

/** Before ink, press or etch is blamed: is it the photograph? */
function readAgain(answer: SeriesAnswer, alike: readonly SeriesPull[]): WorkSeries['readAgain'] {
  const latest = alike.at(-1);
  // one pull alone has changed from nothing
  if (latest?.how !== 'camera' || alike.length < 2 || answer.steady === true || latest.readings > 1)
    return null;
  return {
    pull: latest.number,
    why: `Is it the photograph? Set pull ${latest.number} up afresh and photograph it again before anything else is blamed.`,
  };
}
