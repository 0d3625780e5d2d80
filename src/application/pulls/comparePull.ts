import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { Pull } from '../../records/pull.ts';
import type { PairedTone, PullChange, PullPartner, PullTones } from '../../records/pullTones.ts';
import type { Work } from '../../records/work.ts';
import type { KeptSeriesSettings } from '../../records/workSeries.ts';
import type { Store } from '../../store/openStore.ts';
import { sameAge } from '../../studio/proofs/comparablePulls.ts';
import { comparisonWords } from '../../studio/proofs/pullChangeWords.ts';
import { pullGroups } from '../../studio/proofs/pullReadings.ts';
import { paperWords } from '../../studio/proofs/workSeries.ts';
import { type DifferencePictures, differencePictures } from './differencePictures.ts';
import { type PairRule, pairTones } from './pairTones.ts';
import { stoneJob } from './pullJob.ts';
import { pullOfWork } from './pullOfWork.ts';
import type { PullQueue } from './pullQueue.ts';
import { readRoomNoise } from './readRoomNoise.ts';
import { settingsOf } from './seriesSettings.ts';

export interface ComparePullParts {
  readonly store: Store;
  readonly pullQueue: Pick<PullQueue, 'read'>;
}

/** What a pull is compared with: by name, or another pull of the work by its number. */
export type PartnerName = PullPartner | number;

/** One side of a comparison: what was read, and under which key its map is kept. */
interface Side {
  readonly tones: PullTones;
  readonly key: string;
  readonly pull: { readonly pull: Pull; readonly age: number | null } | null;
}

/** Against the stone a place holds within this much coverage, as in every comparison. */
const heldWithin = 0.05;

/**
 * A pull beside the stone or another pull, in darkness against the one reference of its series.
 * @returns `pull-unread`, `partner-missing`, `stone-photograph-missing`, or the faults of `pullOfWork`
 */
export async function comparePull(
  parts: ComparePullParts,
  workId: string,
  pullId: string,
  name: PartnerName,
): Promise<Result<PullChange>> {
  const sides = await sidesOf(parts, workId, pullId, name);
  if (!sides.ok) return sides;
  const { own, partner, settings, number } = sides.value;
  const rule = ruleOf(own, partner, settings);
  const pair = (before: PairedTone['partner'], after: PairedTone['pull']) => pairTones(before, after, rule);
  const [lights, middles, darks] = seriesTones.map((tone: SeriesTone) =>
    pair(partner.tones.tones[tone], own.tones.tones[tone]),
  ) as [PairedTone, PairedTone, PairedTone];
  const zones = own.tones.zones.map(({ id, name: zone, darkness }) => ({
    id,
    name: zone,
    ...pair(partner.tones.zones.find((one) => one.id === id)?.darkness ?? null, darkness),
  }));
  const pictures = await picturesOf(parts, own, partner, rule);
  const change: Omit<PullChange, 'sentences' | 'warnings'> = {
    partner: typeof name === 'number' ? 'pull' : name,
    number,
    measure: rule.kind === 'stone' ? 'coverage' : 'darkness',
    tones: { lights, middles, darks },
    zones,
    strength: { partner: partner.tones.strength, pull: own.tones.strength },
    maps: pictures?.maps ?? null,
  };
  const grounds = {
    change,
    absolute: rule.absolute,
    chips: { partner: hasChips(partner), pull: hasChips(own) },
    reference: settings.reference,
    papers: partner.pull &&
      own.pull && {
        partner: paperWords(partner.pull.pull),
        pull: paperWords(own.pull.pull),
        sameAge: sameAge(partner.pull.age, own.pull.age),
      },
  };
  return ok({ ...change, ...comparisonWords(grounds) });
}

/** Where a map of such a comparison lies; `not-found` for a name that it does not have. */
export async function comparePullFile(
  parts: ComparePullParts,
  workId: string,
  pullId: string,
  name: PartnerName,
  file: string,
): Promise<Result<string>> {
  const sides = await sidesOf(parts, workId, pullId, name);
  if (!sides.ok) return sides;
  const { own, partner, settings } = sides.value;
  const rule = ruleOf(own, partner, settings);
  const pictures = await picturesOf(parts, own, partner, rule);
  const path = pictures?.files.get(file);
  return path ? ok(path) : fail(failure('not-found', { what: 'such file' }));
}

async function picturesOf(
  { store }: ComparePullParts,
  own: Side,
  partner: Side,
  rule: PairRule,
): Promise<DifferencePictures | null> {
  if (!rule.comparable) return null;
  const sigma = rule.kind === 'pulls' ? (await readRoomNoise({ store })).sigma : null;
  return differencePictures(store, partner.key, own.key, rule, sigma?.value ?? null);
}

async function sidesOf(parts: ComparePullParts, workId: string, pullId: string, name: PartnerName) {
  const { store } = parts;
  const found = await pullOfWork(store, workId, pullId);
  if (!found.ok) return found;
  const { pull, work } = found.value;
  const settings = await settingsOf(store, work);
  const groups = await readPull(store, pull);
  if (groups.length === 0) return fail(failure('pull-unread', { number: pull.number }));
  if (name === 'drawn' || name === 'inked') {
    const stone = await stoneSide(parts, work, settings, name);
    return stone.ok ? ok({ own: groups[0]!, partner: stone.value, settings, number: null }) : stone;
  }
  const other = await otherPull(store, work, settings, pull, name);
  if (!other.ok) return other;
  const others = await readPull(store, other.value);
  if (others.length === 0) {
    const why = `pull ${other.value.number} was not measured`;
    return fail(failure('partner-missing', { number: pull.number, why }));
  }
  // of what both were read at, the first age that they share
  const own = groups.find((one) => others.some((two) => sameAge(one.pull!.age, two.pull!.age))) ?? groups[0]!;
  const partner = others.find((two) => sameAge(own.pull!.age, two.pull!.age)) ?? others[0]!;
  return ok({ own, partner, settings, number: other.value.number });
}

/** What a pull was read to be, once for each age, youngest first. */
async function readPull(store: Store, pull: Pull): Promise<readonly Side[]> {
  const keys = new Map<string, string>();
  const tonesOf = new Map<string, PullTones>();
  for (const { photograph, state, resultKey } of await store.pullMeasurings.ofPull(pull.id)) {
    const tones = state === 'measured' && resultKey !== null ? await store.pullFiles.record(resultKey) : null;
    if (!tones) continue;
    keys.set(photograph, resultKey!);
    tonesOf.set(photograph, tones);
  }
  return pullGroups(pull, tonesOf).map(({ age, photographs, each }) => ({
    tones: each[0]!,
    key: keys.get(photographs[0]!)!,
    pull: { pull, age },
  }));
}

async function stoneSide(
  { store, pullQueue }: ComparePullParts,
  work: Work,
  settings: KeptSeriesSettings,
  state: 'drawn' | 'inked',
): Promise<Result<Side>> {
  const job = await stoneJob({ store }, work, settings, state);
  if (!job.ok) return job;
  const tones = await pullQueue.read(job.value);
  if (!tones.ok) return tones;
  return ok({ tones: tones.value, key: job.value.key, pull: null });
}

async function otherPull(
  store: Store,
  work: Work,
  { best }: KeptSeriesSettings,
  pull: Pull,
  name: 'last' | 'best' | number,
): Promise<Result<Pull>> {
  const none = (why: string) => fail(failure('partner-missing', { number: pull.number, why }));
  if (name === 'last') {
    const before = (await store.pulls.ofWork(work.id)).filter(({ number }) => number < pull.number);
    for (const one of before.toReversed()) if ((await readPull(store, one)).length > 0) return ok(one);
    return none('no pull before it was measured');
  }
  const standard = (await store.series.approvals(work.id)).find(({ withdrawn }) => withdrawn === null);
  const number = name === 'best' ? (best ?? standard?.pull ?? null) : name;
  if (number === null) return none('no pull was said to be the best, and none is good to print');
  if (number === pull.number) return none('it is that pull itself');
  const other = await store.pulls.numbered(work.id, number);
  return other === null ? none(`there is no pull ${number} of this work`) : ok(other);
}

function ruleOf(own: Side, partner: Side, { tolerance, reference }: KeptSeriesSettings): PairRule {
  const whole = { value: 1, deviation: 0 };
  if (partner.pull) {
    const samePaper = paperWords(partner.pull.pull) === paperWords(own.pull!.pull);
    return {
      kind: 'pulls',
      scale: { partner: whole, pull: whole },
      within: tolerance,
      absolute: hasChips(partner) && hasChips(own),
      comparable: samePaper && sameAge(partner.pull.age, own.pull!.age),
    };
  }
  const film = own.tones.solid;
  const solid = (found: PullTones['solid']) =>
    found && { value: found.darkness, deviation: (found.high - found.low) / 3.92 };
  const kept = reference && { value: reference.darkness, deviation: 0.005 };
  const stone = solid(partner.tones.solid);
  return {
    kind: 'stone',
    scale: { partner: stone ?? whole, pull: kept ?? solid(film) ?? whole },
    within: heldWithin,
    // the pull whose own film is the reference carries it on the same photograph
    absolute: hasChips(own) || reference === null || reference.pull === own.pull!.pull.number,
    comparable: stone !== null && (kept !== null || film !== null),
  };
}

function hasChips({ tones }: Side): boolean {
  return tones.response?.origin === 'chips';
}
