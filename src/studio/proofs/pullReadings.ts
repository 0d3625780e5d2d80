import type { Measured } from '../../foundation/measured.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import { sameAge } from './comparablePulls.ts';
import { pullAge } from './pullAge.ts';

type Tones = Readonly<Record<SeriesTone, Measured | null>>;

/** Photographs of one sheet at one age, as one reading. */
export interface PullGroup {
  readonly age: number | null;
  readonly photographs: readonly string[];
  readonly each: readonly PullTones[];
  /** Their mean, with the widest of their intervals about it. */
  readonly tones: Tones;
}

/** What a pull's photographs were read to be, grouped by age, youngest first. Refused ones say nothing. */
export function pullGroups(pull: Pull, tonesOf: ReadonlyMap<string, PullTones>): readonly PullGroup[] {
  const groups: { age: number | null; photographs: string[]; each: PullTones[] }[] = [];
  for (const shown of pull.photographs) {
    const tones = tonesOf.get(shown.photograph);
    if (tones?.verdict !== 'ok') continue;
    const age = pullAge(pull, shown)?.minutes ?? null;
    const group = groups.find((one) => sameAge(one.age, age));
    if (group) {
      group.photographs.push(shown.photograph);
      group.each.push(tones);
    } else groups.push({ age, photographs: [shown.photograph], each: [tones] });
  }
  return groups
    .sort((a, b) => (a.age ?? Infinity) - (b.age ?? Infinity))
    .map((group) => ({ ...group, tones: meanTones(group.each) }));
}

/** The differences that σ of the room is made of: each tone of a sheet that was read more than once at one age. */
export function repeatedReadings(groups: readonly PullGroup[]): readonly (readonly number[])[] {
  return groups
    .filter(({ each }) => each.length > 1)
    .flatMap(({ each }) =>
      seriesTones
        .map((tone) => each.flatMap(({ tones }) => tones[tone]?.value ?? []))
        .filter(({ length }) => length > 1),
    );
}

function meanTones(each: readonly PullTones[]): Tones {
  const [lights, middles, darks] = seriesTones.map((tone) => {
    const read = each.flatMap(({ tones }) => tones[tone] ?? []);
    return read.length < each.length ? null : meanOf(read);
  });
  return { lights: lights!, middles: middles!, darks: darks! };
}

function meanOf(read: readonly Measured[]): Measured | null {
  const [first] = read;
  if (!first) return null;
  const value = read.reduce((sum, one) => sum + one.value, 0) / read.length;
  const below = Math.max(...read.map((one) => one.value - one.low));
  const above = Math.max(...read.map((one) => one.high - one.value));
  return { ...first, value, low: value - below, high: value + above };
}
