import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ZoneToneReading, ZoneTonesReading } from '../../imaging/tone/readZoneTones.ts';
import type { Work } from '../../records/work.ts';
import type { ZoneTone, ZoneTones, ZoneTonesRequest } from '../../records/zoneTones.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { StoredPhotograph } from '../../store/repositories/photographRepository.ts';
import type { PictureDesk } from '../pictures/pictureDesk.ts';
import { noSuchWork } from '../works/findWork.ts';
import { type TonePlace, tonePlace } from './tonePlace.ts';

/** Where the darkest place is lighter than this, it may be no full film: our rule. */
const doubtfulSolid = 0.6;
/** Share of the rectangle with a clipped channel, and photograph px to the mm, from which tones suffer: as in comparisons. */
const limits = { clipped: 0.02, pxPerMm: 3 };

export interface ZoneTonesParts {
  readonly store: Pick<KeptRecords, 'works' | 'stones' | 'photographs'>;
  readonly desk: Pick<PictureDesk, 'tonesOf'>;
}

/**
 * Reads mean and darkest tone of a work's zones from a photograph of its stone. Nothing is saved: the person accepts.
 * @param called aborted, it calls the reading off
 * @returns `not-found`, `reference-unknown` for a photograph that is not attached, `stopped`, or the faults of `tonePlace`
 */
export async function measureZoneTones(
  { store, desk }: ZoneTonesParts,
  workId: string,
  request: ZoneTonesRequest,
  called?: AbortSignal,
): Promise<Result<ZoneTones>> {
  const work = await store.works.find(workId);
  if (work === null) return fail(noSuchWork());
  const place = await placeOnPhotograph(store, work, request, 'photograph');
  if (!place.ok) return place;
  const read = await desk.tonesOf(place.value.photograph, place.value.place, [], called);
  if (!read.ok) return read;
  const { reading } = read.value;
  return ok({
    photograph: request.photograph,
    workVersion: work.version,
    solid: solidOf(reading),
    zones: work.zones.map(({ id }) => zoneToneOf(id, reading)),
    warnings: warningsOf(reading),
  });
}

/** Finds a photograph among those of a work and its stone, and where the zones lie on it. */
export async function placeOnPhotograph(
  store: Pick<KeptRecords, 'stones' | 'photographs'>,
  work: Work,
  request: ZoneTonesRequest,
  path: string,
): Promise<Result<{ readonly photograph: StoredPhotograph; readonly place: TonePlace }>> {
  const stone = (await store.stones.find(work.stoneId))!;
  const all = [...work.photographs, ...stone.photographs].filter(
    ({ photograph }) => photograph === request.photograph,
  );
  // Attached twice, the one with corners says more.
  const attached = all.find(({ corners }) => corners !== null) ?? all[0];
  const photograph = attached ? await store.photographs.find(attached.photograph) : null;
  if (!attached || photograph === null) {
    const what = 'photograph attached to this work or its stone';
    return fail(failure('reference-unknown', { what, id: request.photograph }, path));
  }
  const place = tonePlace(work, stone, photograph, attached, request);
  return place.ok ? ok({ photograph, place: place.value }) : place;
}

function zoneToneOf(zone: string, reading: Reading): ZoneTone {
  if (reading === null) return without(zone, 'no bare stone could be found on the photograph');
  if (reading.solid === null)
    return without(zone, 'no full film to compare with could be found on the photograph');
  const coverage = reading.zones.find(({ id }) => id === zone)?.coverage ?? null;
  if (coverage === null) return without(zone, 'too little of it lies in the rectangle that was read');
  return { zone, ...toneOf(coverage), why: null };
}

type Reading = Omit<ZoneTonesReading, 'brushTone'> | null;

function toneOf({ mean, low, high, darkest }: NonNullable<ZoneToneReading['coverage']>) {
  return {
    tone: { mean: thousandth(mean), darkest: thousandth(darkest), basis: 'measured' },
    mean: { low: thousandth(low), high: thousandth(high) },
  } as const;
}

function without(zone: string, why: string): ZoneTone {
  return { zone, tone: null, mean: null, why };
}

function solidOf(reading: Reading): ZoneTones['solid'] {
  if (!reading?.solid) return null;
  const { darkness, error } = reading.solid;
  const half = 1.96 * error;
  return {
    darkness: thousandth(darkness),
    low: thousandth(Math.max(0, darkness - half)),
    high: thousandth(Math.min(1, darkness + half)),
  };
}

function warningsOf(reading: Reading): string[] {
  if (reading === null) return [];
  const { clipped, photoPxPerMm, solid } = reading;
  return [
    ...(clipped > limits.clipped
      ? [
          `The photograph is overexposed on ${Math.round(clipped * 100)} % of the picture: tones there are lost.`,
        ]
      : []),
    ...(photoPxPerMm < limits.pxPerMm
      ? [`The photograph has only ${photoPxPerMm.toFixed(1)} px per millimetre: fine marks can't be told.`]
      : []),
    ...(solid && solid.darkness < doubtfulSolid
      ? [
          `The darkest place is only ${Math.round(solid.darkness * 100)} % dark: if it is no full film, all tones read too dark.`,
        ]
      : []),
    'Darkness is pigment, not grease: graphite and waxy solids shine and read light, and tannin darkens stone.',
  ];
}

function thousandth(value: number): number {
  return Math.round(value * 1000) / 1000;
}
