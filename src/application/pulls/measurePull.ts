import { readFile } from 'node:fs/promises';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { decodePhotograph } from '../../imaging/codecs/decodePhotograph.ts';
import { coverageMap } from '../../imaging/maps/coverageMaps.ts';
import { writeToneMap } from '../../imaging/maps/toneMapFile.ts';
import {
  mapOfCorners,
  type Registered,
  type Registration,
  register,
} from '../../imaging/matching/register.ts';
import type { Photograph } from '../../imaging/photograph.ts';
import type { PlaneMap } from '../../imaging/planeMap.ts';
import type { Raster } from '../../imaging/raster.ts';
import { solidRecord, strengthOf } from '../../imaging/tone/measureTone.ts';
import { pictureWarnings, qualityLimits } from '../../imaging/tone/pictureQuality.ts';
import { measured, pullDarkness } from '../../imaging/tone/printTones.ts';
import { readBare } from '../../imaging/tone/readBare.ts';
import { readSide } from '../../imaging/tone/readSide.ts';
import { coveredShare, sheetWarnings } from '../../imaging/tone/sheetWarnings.ts';
import type { SideInput } from '../../imaging/tone/sideInput.ts';
import { defaultParameters } from '../../records/comparison.ts';
import { type PullTones, pullTonesSchema } from '../../records/pullTones.ts';
import type { MeasuringHooks } from '../comparison/measureInput.ts';
import { repeatMap } from '../comparison/repeatMap.ts';
import { validateChips } from '../comparison/validateChips.ts';
import { engineVersion } from '../engineVersion.ts';
import type { PullJob } from './pullJob.ts';

/** What a reading leaves: its record, and the map of darkness in the frame of the drawn stone. */
export interface MeasuredPull {
  readonly record: PullTones;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** The map of darkness beside the record. */
export const toneMapName = 'darkness.map';

/** Where each step begins, as a share of the whole: measured on 12-megapixel pairs. */
const begins = { reading: 0, matching: 0.15, tones: 0.6, maps: 0.9 } as const;
/** Tones are read over millimetres: a stretch found so coarsely is right to some hundredths of one. */
const sparing = { finestPxPerMm: 4, spacingMm: 18 } as const;
/** Where a stone could only be laid by its corners, they are set to about so many mm: our rule. */
const cornersMm = 0.3;

const nothing = {
  warnings: [],
  registration: null,
  tones: { lights: null, middles: null, darks: null },
  zones: [],
  solid: null,
  strength: null,
  ground: null,
  response: null,
  covered: 0,
} as const;

/**
 * Reads one photograph of a pull: brings it onto the drawn stone, and measures darkness against its own paper. A stone is
 * read likewise, against its own bare ground. Heavy: meant for a thread.
 * @returns a refused print (wrong way round, no match) as a record too; the faults of decoding, `corners-not-found`, `stopped`
 */
export async function measurePull(job: PullJob, hooks: MeasuringHooks): Promise<Result<MeasuredPull>> {
  hooks.progress({ stage: 'reading', fraction: begins.reading });
  const other = job.kind === 'print' ? job.print : job.onto;
  const [stone, second] = await Promise.all([decode(job.stone), other ? decode(other) : null]);
  if (!stone.ok) return stone;
  if (second && !second.ok) return second;
  if (hooks.stopped()) return fail(failure('stopped'));
  hooks.progress({ stage: 'matching', fraction: begins.matching });
  if (job.kind === 'stone') return stoneRead(job, stone.value, second?.value ?? null, hooks);
  return printRead(job, stone.value, second!.value, hooks);
}

async function decode({ file, fileName }: { readonly file: string; readonly fileName: string }) {
  return decodePhotograph(await readFile(file), fileName);
}

function printRead(
  job: Extract<PullJob, { kind: 'print' }>,
  stone: Photograph,
  print: Photograph,
  hooks: MeasuringHooks,
): Result<MeasuredPull> {
  const chips = job.print.chips.map((chip) => ({ ...chip, photo: 'proof' as const }));
  const misplaced = validateChips(chips, 'proof', print.widthPx, print.heightPx);
  if (misplaced) return fail(misplaced);
  const found = onStone(job, stone, print, hooks);
  if (!found.ok) return found;
  if (found.value.verdict !== 'ok') return ok(refused(found.value));
  const { proofMap, covered, errorMm } = found.value;
  const input: SideInput = { ...sideOf(job, 'proof', print, proofMap), chips, covered };
  return read(job, input, { errorMm, registered: found.value }, hooks);
}

function onStone(
  job: Extract<PullJob, { kind: 'print' }>,
  stone: Photograph,
  print: Photograph,
  hooks: MeasuringHooks,
): Result<Registration> {
  return register({
    stone,
    proof: print,
    sizeMm: job.sizeMm,
    stoneCorners: job.stone.corners,
    proofCorners: job.print.corners,
    sparing,
    onProgress: (share) =>
      hooks.progress({
        stage: 'matching',
        fraction: begins.matching + share * (begins.tones - begins.matching),
      }),
    stopped: hooks.stopped,
  });
}

function stoneRead(
  job: Extract<PullJob, { kind: 'stone' }>,
  stone: Photograph,
  onto: Photograph | null,
  hooks: MeasuringHooks,
): Result<MeasuredPull> {
  const own = mapOfCorners(job.sizeMm, job.stone.corners);
  const first = job.onto && mapOfCorners(job.sizeMm, job.onto.corners);
  const matched = onto && first && repeatMap(onto, first, stone, job.sizeMm);
  const map = matched ?? own;
  if (!map) {
    const why = 'they make no rectangle';
    return fail(failure('corners-not-found', { photo: 'stone', why }));
  }
  const byCorners: Raster = {
    widthPx: 1,
    heightPx: 1,
    pxPerMm: 1,
    originMm: [0, 0],
    data: Float32Array.of(cornersMm),
  };
  const errorMm = onto && !matched ? byCorners : null;
  return read(job, sideOf(job, 'stone', stone, map), { errorMm, registered: null }, hooks);
}

function sideOf(job: PullJob, side: SideInput['side'], photo: Photograph, map: PlaneMap): SideInput {
  return { side, photo, map, flat: null, chips: [], zones: job.zones, sizeMm: job.sizeMm, covered: null };
}

interface Placing {
  readonly errorMm: Raster | null;
  readonly registered: Registered | null;
}

function read(
  job: PullJob,
  input: SideInput,
  { errorMm, registered }: Placing,
  hooks: MeasuringHooks,
): Result<MeasuredPull> {
  if (hooks.stopped()) return fail(failure('stopped'));
  hooks.progress({ stage: 'tones', fraction: begins.tones });
  const side = readSide(input);
  const name = input.side === 'stone' ? 'stone' : 'print';
  const unread = (why: string): MeasuredPull => ({
    record: {
      schema: pullTonesSchema,
      engine: engineVersion,
      ...nothing,
      verdict: 'no-match',
      reason: why,
      bare: { darkness: null, why },
    },
    files: new Map(),
  });
  if (!side) return ok(unread(`no bare ground could be found on the photograph of the ${name}`));
  if (side.clipped > qualityLimits.noTone) {
    return ok(unread(`the photograph of the ${name} is burnt out: take it again with less exposure`));
  }
  const bare = readBare(side, job.zones, job.sizeMm);
  const covered = input.covered ? coveredShare(input.covered) : 1;
  hooks.progress({ stage: 'maps', fraction: begins.maps });
  const map = coverageMap(side, 1, job.sizeMm, defaultParameters.smoothingMm, errorMm);
  const warnings = [
    ...pictureWarnings(input, side, null),
    ...(registered ? sheetWarnings(registered.covered, registered.partial, side.groundRecord) : []),
  ];
  const registration = registered && {
    kind: registered.kind,
    turn: registered.turn,
    mirrored: registered.mirrored,
    residualMm: registered.residualMm,
  };
  const record: PullTones = {
    schema: pullTonesSchema,
    engine: engineVersion,
    verdict: 'ok',
    reason: null,
    warnings,
    registration,
    ...pullDarkness(side, job.zones, job.tones, errorMm),
    bare: {
      darkness: bare.darkness === null ? null : measured(bare.darkness, bare.deviation),
      why: bare.why,
    },
    solid: solidRecord(side.solid),
    strength: strengthOf(side.solid),
    ground: side.groundRecord,
    response: side.response,
    covered,
  };
  return ok({ record, files: new Map([[toneMapName, writeToneMap(map)]]) });
}

function refused({ verdict, reason }: Exclude<Registration, { readonly verdict: 'ok' }>): MeasuredPull {
  const record: PullTones = {
    schema: pullTonesSchema,
    engine: engineVersion,
    ...nothing,
    verdict,
    reason,
    bare: { darkness: null, why: reason },
  };
  return { record, files: new Map() };
}
