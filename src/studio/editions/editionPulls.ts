import type { Measured } from '../../foundation/measured.ts';
import type { ToneReading } from '../../records/edition.ts';
import type { Impression } from '../../records/ledger.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import { sameAge } from '../proofs/comparablePulls.ts';
import type { EditionPull } from './drift.ts';
import type { PhotographedTones, PrintTones } from './printTones.ts';

/** The impressions that were read alike, beside the approval proof, and those that were read otherwise. */
export interface ComparedImpressions {
  readonly pulls: readonly EditionPull[];
  /** By photograph, or as a person typed them; null: none was read. */
  readonly how: 'camera' | 'typed' | null;
  /** Numbers of those left out, since they were read wetter or drier than the rest. */
  readonly otherAge: readonly number[];
  /** Numbers of those left out, since the latest was read the other way. */
  readonly otherWay: readonly number[];
  /** How the approval proof was read; null: it can’t be told how far the prints are from it. */
  readonly approval: 'camera' | 'typed' | null;
  /** What to mind, in sentences. */
  readonly sentences: readonly string[];
}

const nothing: PhotographedTones = { approval: [], impressions: new Map() };

/**
 * Distances of the impressions from the approval proof, those read from photographs with their 95 % range. Drying changes
 * tone and two ways of reading differ, so nothing is pooled across age, nor photographs with typed tones: the latest that
 * was read decides which way counts.
 */
export function editionPulls(
  impressions: readonly Impression[],
  typedApproval: ToneReading,
  photographed: PhotographedTones = nothing,
): ComparedImpressions {
  const ordered = [...impressions].sort((one, other) => one.n - other.n);
  const shown = ordered.map(({ id, n, reading }) => ({
    n,
    camera: photographed.impressions.get(id) ?? [],
    typed: reading && { age: reading.ageMinutes, tones: typedTones(reading) },
  }));
  const latest = shown.findLast(({ camera, typed }) => camera.length > 0 || typed !== null);
  if (!latest) return { pulls: [], how: null, otherAge: [], otherWay: [], approval: null, sentences: [] };
  const how = latest.camera.length > 0 ? 'camera' : 'typed';
  const ways = shown.map(({ n, camera, typed }) => ({
    n,
    read: how === 'camera' ? camera : typed ? [typed] : [],
    other: how === 'camera' ? typed !== null && camera.length === 0 : camera.length > 0 && typed === null,
  }));
  const age = ageShared(ways.map(({ read }) => read));
  const at = (read: readonly PrintTones[]) => read.find((one) => sameAge(one.age, age)) ?? null;
  const approved = how === 'camera' ? at(photographed.approval) : null;
  const typed = seriesTones.some((tone) => typedApproval[tone] !== null);
  const partner = approved?.tones ?? typedTones(typedApproval);
  const pulls = ways.flatMap(({ n, read }) => {
    const own = at(read);
    return own ? [distancesOf(n, own.tones, partner)] : [];
  });
  const otherAge = ways.flatMap(({ n, read }) => (read.length > 0 && !at(read) ? [n] : []));
  const otherWay = ways.flatMap(({ n, other }) => (other ? [n] : []));
  const approval = approved ? 'camera' : typed ? 'typed' : null;
  return {
    pulls,
    how,
    otherAge,
    otherWay,
    approval,
    sentences: wordsOf({ how, otherAge, otherWay, approval, elsewhere: photographed.approval.length > 0 }),
  };
}

type Tones = Readonly<Record<SeriesTone, Measured | null>>;

function typedTones(reading: ToneReading): Tones {
  const told = (value: number | null): Measured | null =>
    value === null ? null : { value, low: value, high: value, basis: 'typed', warnings: [] };
  return { lights: told(reading.lights), middles: told(reading.middles), darks: told(reading.darks) };
}

/** The two photographs err independently; what was typed has no known error, and then the range is the other's alone. */
function distancesOf(n: number, own: Tones, partner: Tones): EditionPull {
  const from = (tone: SeriesTone) => {
    const [one, other] = [own[tone], partner[tone]];
    if (!one || !other) return null;
    const value = one.value - other.value;
    const below = Math.hypot(one.value - one.low, other.high - other.value);
    const above = Math.hypot(one.high - one.value, other.value - other.low);
    const range = one.basis === 'typed' ? null : ([value - below, value + above] as const);
    return { value, range };
  };
  const [lights, middles, darks] = [from('lights'), from('middles'), from('darks')];
  return {
    n,
    lights: lights?.value ?? null,
    middles: middles?.value ?? null,
    darks: darks?.value ?? null,
    ranges: { lights: lights?.range ?? null, middles: middles?.range ?? null, darks: darks?.range ?? null },
  };
}

/** Of the ages at which the latest print was read, the one that most others share. */
function ageShared(all: readonly (readonly PrintTones[])[]): number | null {
  const latest = all.findLast((read) => read.length > 0)!;
  const shared = ({ age }: PrintTones) =>
    all.filter((read) => read.some((one) => sameAge(one.age, age))).length;
  return latest.reduce((best, one) => (shared(one) > shared(best) ? one : best)).age;
}

function wordsOf(found: {
  readonly how: 'camera' | 'typed';
  readonly otherAge: readonly number[];
  readonly otherWay: readonly number[];
  readonly approval: 'camera' | 'typed' | null;
  readonly elsewhere: boolean;
}): readonly string[] {
  const { how, otherAge, otherWay, approval, elsewhere } = found;
  const said: string[] = [];
  if (how === 'typed') said.push('These tones were typed: how sure they are is not known.');
  if (how === 'camera' && approval === 'typed')
    said.push('The approval proof’s tones were typed: how sure they are is not known.');
  if (how === 'camera' && elsewhere && approval !== 'camera')
    said.push(
      'The approval proof was photographed at another age than the prints, and ink dries paler: photograph it at theirs.',
    );
  if (otherAge.length > 0)
    said.push(`Left out, since they were read wetter or drier: ${otherAge.join(', ')}.`);
  if (otherWay.length > 0) {
    const way = how === 'camera' ? 'typed' : 'photographed';
    said.push(`Left out, since they were ${way} and the latest was not: ${otherWay.join(', ')}.`);
  }
  return said;
}
