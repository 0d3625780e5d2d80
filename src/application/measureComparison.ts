import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { mapOfCorners, type Registered, type Registration, register } from '../imaging/matching/register.ts';
import type { Photograph } from '../imaging/photograph.ts';
import { measureTone, stoneSideInput } from '../imaging/tone/measureTone.ts';
import type { SideTone } from '../imaging/tone/readSide.ts';
import type { RepeatedPhotograph } from '../imaging/tone/repeatFloor.ts';
import type { MeasuringStage } from '../records/comparisonEntry.ts';
import { checkedPhotographs } from './comparison/checkedPhotographs.ts';
import { comparisonPictures, type PicturedSide } from './comparison/comparisonPictures.ts';
import { measuredRecord, parametersOf, refusedRecord } from './comparison/comparisonRecord.ts';
import { comparisonSheets, picturesAsTaken } from './comparison/comparisonSheets.ts';
import type { DecodedPhotographs } from './comparison/decodeAll.ts';
import { evidenceFile } from './comparison/evidenceFile.ts';
import type { MeasuredComparison, MeasureInput, MeasuringHooks } from './comparison/measureInput.ts';
import { readStoneAside, type StoneReading } from './comparison/readStoneAside.ts';
import { repeatMap } from './comparison/repeatMap.ts';
import { sheetMask } from './comparison/sheetMask.ts';

/** Where each stage begins, as a share of the whole: measured on 24-megapixel pairs. */
const stageBegins: Record<MeasuringStage, number> = {
  reading: 0,
  matching: 0.12,
  light: 0.5,
  tones: 0.5,
  maps: 0.85,
  sheets: 0.88,
};

/**
 * Measures what printed against what was drawn: reads both photographs, brings the print onto the stone, reads tones, and
 * makes the record with its pictures and sheets.
 * @param measuredAt the day that stands on the sheet.
 * @returns a refused pair (wrong way round, no match) as a record too; failures of input, and `stopped`.
 */
export async function measureComparison(
  input: MeasureInput,
  hooks: MeasuringHooks,
  measuredAt: Date,
): Promise<Result<MeasuredComparison>> {
  const report = (stage: MeasuringStage, share = 0, ends = stageBegins[stage]) =>
    hooks.progress({ stage, fraction: stageBegins[stage] + share * (ends - stageBegins[stage]) });
  report('reading');
  const read = await checkedPhotographs(input, hooks);
  if (!read.ok) return read;
  const photos = read.value;
  report('matching');
  const aside = stoneAside(input, photos);
  const registration = register({
    stone: photos.stone,
    proof: photos.proof,
    sizeMm: input.sizeMm,
    stoneCorners: input.stone.corners,
    proofCorners: input.proof.corners,
    proofCornersInOrder: input.cornersInOrder ?? false,
    onProgress: (share) => report('matching', share, stageBegins.tones),
    stopped: hooks.stopped,
  });
  const matched = registration.ok && registration.value.verdict === 'ok';
  const stoneRead = matched ? await aside?.done() : undefined;
  aside?.stop();
  if (!registration.ok) return registration;
  if (registration.value.verdict !== 'ok')
    return ok(await refusedComparison(input, photos, registration.value, measuredAt));
  return measuredComparison(input, photos, registration.value, stoneRead, hooks, report, measuredAt);
}

/** Where the stone's corners were given it can be read before the print is found. */
function stoneAside(input: MeasureInput, photos: DecodedPhotographs): StoneReading | null {
  const stoneMap = input.stone.corners && mapOfCorners(input.sizeMm, input.stone.corners);
  if (!stoneMap) return null;
  const { zones, chips, sizeMm } = input;
  return readStoneAside(
    stoneSideInput({ stone: photos.stone, stoneMap, flats: photos.flats, zones, chips, sizeMm }),
  );
}

async function refusedComparison(
  input: MeasureInput,
  photos: DecodedPhotographs,
  refused: Exclude<Registration, { readonly verdict: 'ok' }>,
  measuredAt: Date,
): Promise<MeasuredComparison> {
  const record = refusedRecord(input, refused);
  return {
    record,
    files: await comparisonSheets(record, titleOf(input), measuredAt, await picturesAsTaken(photos)),
  };
}

async function measuredComparison(
  input: MeasureInput,
  photos: DecodedPhotographs,
  registered: Registered,
  stoneRead: SideTone | null | undefined,
  hooks: MeasuringHooks,
  report: (stage: MeasuringStage, share?: number, ends?: number) => void,
  measuredAt: Date,
): Promise<Result<MeasuredComparison>> {
  const repeated = (side: 'stone' | 'proof'): RepeatedPhotograph | null => {
    const again: Photograph | null = photos.repeats[side];
    if (!again) return null;
    const map = repeatMap(
      photos[side],
      side === 'stone' ? registered.stoneMap : registered.proofMap,
      again,
      input.sizeMm,
    );
    return map && { photo: again, map };
  };
  const tone = measureTone({
    stone: photos.stone,
    proof: photos.proof,
    stoneMap: registered.stoneMap,
    proofMap: registered.proofMap,
    sizeMm: input.sizeMm,
    covered: registered.covered,
    errorMm: registered.errorMm,
    partial: registered.partial,
    zones: input.zones,
    chips: input.chips,
    flats: photos.flats,
    repeats: { stone: repeated('stone'), proof: repeated('proof') },
    ...(stoneRead !== undefined && { stoneRead }),
    parameters: parametersOf(input),
    onProgress: (share) => report(share < 0.9 ? 'tones' : 'maps', share < 0.9 ? share : 0, stageBegins.maps),
    stopped: hooks.stopped,
  });
  if (!tone) return fail(failure('stopped'));
  report('sheets');
  const record = measuredRecord(input, registered, tone);
  const pictured = (side: 'stone' | 'proof'): PicturedSide => ({
    photo: photos[side],
    map: side === 'stone' ? registered.stoneMap : registered.proofMap,
    raster: tone.rasters[side],
  });
  const sides = { stone: pictured('stone'), proof: pictured('proof') };
  // Pictures are coded on threads of their own meanwhile.
  const coding = comparisonPictures(sides, tone.maps, input.sizeMm);
  const evidence = evidenceFile(tone, input.zones);
  const pictures = await coding;
  if (evidence) pictures.set('evidence.json', evidence);
  if (registered.partial) pictures.set('sheet.png', await sheetMask(registered.covered));
  if (hooks.stopped()) return fail(failure('stopped'));
  const sheets = await comparisonSheets(record, titleOf(input), measuredAt, {
    stone: pictures.get('stone.jpg')!,
    proof: pictures.get('proof.jpg')!,
    overlay: pictures.get('overlay.png') ?? null,
  });
  hooks.progress({ stage: 'sheets', fraction: 1 });
  return ok({ record, files: new Map([...pictures, ...sheets]) });
}

function titleOf(input: MeasureInput): string {
  return `${input.proof.fileName} against ${input.stone.fileName}`;
}
