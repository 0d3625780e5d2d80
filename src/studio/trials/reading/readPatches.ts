import type { ComparisonRecord, CoverageInterval, ZoneResult } from '../../../records/comparison.ts';
import type { CameraReading, HoldCorrection, PatchFinding } from '../../../records/patchReading.ts';
import type { StonePatch } from '../../../records/testStone.ts';
import { readHold } from './readHold.ts';

/**
 * What became of every patch on one print, in the patches' order.
 * @param record the print compared with the stone, patches as its zones by their ids.
 * @param corrections those of this print, oldest first.
 */
export function readPatches(
  patches: readonly StonePatch[],
  record: ComparisonRecord,
  corrections: readonly HoldCorrection[],
): PatchFinding[] {
  const zones = new Map(record.zones.map((zone) => [zone.id, zone]));
  return patches.map((patch) => {
    const camera = cameraReading(patch, zones.get(patch.id), record);
    const own = corrections.filter((correction) => correction.patch === patch.id);
    const last = own.at(-1);
    const { id, note: _note, ...place } = patch;
    const hold = last ? last.hold : camera.hold;
    return {
      ...place,
      patch: id,
      camera,
      corrections: own,
      hold,
      holdBy: last ? 'hand' : hold === null ? null : 'camera',
    };
  });
}

function cameraReading(
  { intention }: StonePatch,
  zone: ZoneResult | undefined,
  { solid, ground, warnings }: ComparisonRecord,
): CameraReading {
  const read = readHold(intention, intervalOf(zone?.drawn ?? null), intervalOf(zone?.printed ?? null));
  if (read.why === null) return read;
  if (zone === undefined) return { ...read, why: 'It was added after this print was read: read it again.' };
  if (ground === null)
    return {
      ...read,
      why: 'No bare ground could be found on one of the two photographs: take them with bare stone and bare paper all round the patches.',
    };
  const burnt = warnings.some(({ code }) => code === 'overexposed');
  if (solid.stone === null) return { ...read, why: noFilmWords('stone', burnt) };
  // of a print that gave no tones nothing is known of the sheet either
  if (solid.proof === null) return { ...read, why: noFilmWords('print', burnt) };
  if (zone.covered < 0.05) return { ...read, why: 'The sheet does not cover it.' };
  return read;
}

function noFilmWords(of: 'stone' | 'print', burnt: boolean): string {
  return burnt
    ? `The photograph of the ${of} is burnt out, or nothing on it is dark enough to say what a full film is: take it again with less exposure.`
    : `Nothing on the ${of} is dark enough to say what a full film is.`;
}

function intervalOf(read: CoverageInterval | null): CoverageInterval | null {
  return read && { coverage: read.coverage, low: read.low, high: read.high };
}
