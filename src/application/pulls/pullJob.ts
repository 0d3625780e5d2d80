import { createHash } from 'node:crypto';
import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { defaultParameters } from '../../records/comparison.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { PullPhotograph } from '../../records/pull.ts';
import type { Work } from '../../records/work.ts';
import type { SeriesSettings } from '../../records/workSeries.ts';
import type { Zone } from '../../records/zone.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { Store } from '../../store/openStore.ts';
import { engineVersion } from '../engineVersion.ts';
import { type TonePlace, tonePlace } from '../zoneTones/tonePlace.ts';

/** What the places stand for, mm from the top left of the work rectangle. */
export type PlacedTones = Readonly<Record<SeriesTone, readonly Zone[]>>;

interface PlacedPhotograph {
  readonly photograph: string;
  readonly file: string;
  readonly fileName: string;
}

interface Frame {
  readonly sizeMm: Point;
  readonly zones: readonly Zone[];
  readonly tones: PlacedTones;
}

/** What the thread is given: a print to be brought onto its stone, or a stone to be read by itself. */
export type PullJob = Frame &
  (
    | {
        readonly kind: 'print';
        readonly stone: PlacedPhotograph & { readonly corners: Corners };
        readonly print: PlacedPhotograph & Pick<PullPhotograph, 'corners' | 'chips'>;
      }
    | {
        readonly kind: 'stone';
        readonly stone: PlacedPhotograph & { readonly corners: Corners };
        /** The drawn stone that it is brought onto; null: it is that. */
        readonly onto: (PlacedPhotograph & { readonly corners: Corners }) | null;
      }
  );

/** Raised whenever the same photographs could give other readings of a pull, though comparisons stay as they are. */
const readingVersion = 2;

/** A job with the name of its result: a hash of all that the result depends on. */
export interface KeyedJob {
  readonly key: string;
  readonly job: PullJob;
}

export interface PullJobParts {
  readonly store: Pick<KeptRecords, 'stones' | 'photographs' | 'series'> & Pick<Store, 'photographFiles'>;
}

type StoneState = 'drawn' | 'inked';

/** The states that may stand for the stone that prints are brought onto, best first. */
const groundStates: Readonly<Record<StoneState, readonly string[]>> = {
  drawn: ['drawn', 'inked', 'washed-out'],
  inked: ['inked'],
};

/** The reading of a print: where its work has a photograph of the stone, else `stone-photograph-missing`. */
export async function printJob(
  parts: PullJobParts,
  work: Work,
  settings: SeriesSettings,
  shown: PullPhotograph,
): Promise<Result<KeyedJob>> {
  const stone = await placedStone(parts, work, 'drawn');
  if (!stone.ok) return stone;
  const print = { ...(await placed(parts, shown.photograph)), corners: shown.corners, chips: shown.chips };
  const frame = frameOf(stone.value.place, settings);
  return ok(keyed({ kind: 'print', stone: stone.value.photograph, print, ...frame }));
}

/** The reading of the drawn or the inked stone in the frame of the drawn one; or `stone-photograph-missing`. */
export async function stoneJob(
  parts: PullJobParts,
  work: Work,
  settings: SeriesSettings,
  state: StoneState,
): Promise<Result<KeyedJob>> {
  const drawn = await placedStone(parts, work, 'drawn');
  const stone = await placedStone(parts, work, state);
  if (!stone.ok) return stone;
  if (!drawn.ok) return drawn;
  const same = stone.value.photograph.photograph === drawn.value.photograph.photograph;
  const onto = same ? null : drawn.value.photograph;
  const frame = frameOf(drawn.value.place, settings);
  return ok(keyed({ kind: 'stone', stone: stone.value.photograph, onto, ...frame }));
}

async function placedStone({ store }: PullJobParts, work: Work, state: StoneState) {
  const stone = (await store.stones.find(work.stoneId))!;
  const attached = [...stone.photographs, ...work.photographs].filter(({ corners }) => corners !== null);
  const chosen = groundStates[state]
    .map((wanted) => attached.findLast((one) => one.state === wanted))
    .find((one) => one !== undefined);
  const photograph = chosen ? await store.photographs.find(chosen.photograph) : null;
  if (!chosen || !photograph) return fail(missing(work, state));
  const place = tonePlace(work, stone, photograph, chosen, { cornersPx: null, of: null });
  if (!place.ok) return place;
  const { id, kind, fileName } = photograph;
  const corners = place.value.cornersPx;
  const file = store.photographFiles.pathOf(id, kind);
  return ok({ place: place.value, photograph: { photograph: id, file, fileName, corners } });
}

function missing(work: Work, state: StoneState): Failure {
  return failure('stone-photograph-missing', { work: work.title, state });
}

async function placed({ store }: PullJobParts, id: string): Promise<PlacedPhotograph> {
  // the database's foreign keys hold every photograph of a pull
  const { kind, fileName } = (await store.photographs.find(id))!;
  return { photograph: id, file: store.photographFiles.pathOf(id, kind), fileName };
}

function frameOf({ sizeMm, zones, offsetMm: [left, top] }: TonePlace, { areas }: SeriesSettings): Frame {
  const [lights, middles, darks] = seriesTones.map((tone) =>
    areas[tone].polygonsMm.map((polygonMm, index): Zone => {
      const zone = zones.find(({ id }) => id === areas[tone].zones[index]);
      return {
        id: `${tone}-${index + 1}`,
        name: zone?.name ?? tone,
        medium: zone?.medium ?? 'chosen',
        polygonMm: polygonMm.map(([x, y]): Point => [x - left, y - top]),
      };
    }),
  ) as [Zone[], Zone[], Zone[]];
  return { sizeMm, zones, tones: { lights, middles, darks } };
}

function keyed(job: PullJob): KeyedJob {
  const own = (photo: (PlacedPhotograph & { readonly corners: Corners | null }) | null) =>
    photo && [photo.photograph, photo.corners];
  const seen = job.kind === 'print' ? [own(job.print), job.print.chips] : [own(job.onto)];
  const all = ['pull', readingVersion, engineVersion, defaultParameters, job.kind, own(job.stone), seen];
  const frame = [job.sizeMm, job.zones, job.tones];
  return {
    job,
    key: createHash('sha256')
      .update(JSON.stringify([...all, ...frame]))
      .digest('hex'),
  };
}
