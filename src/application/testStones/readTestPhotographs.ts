import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ComparisonRecord } from '../../records/comparison.ts';
import type { PatchFinding, TestStoneCaution } from '../../records/patchReading.ts';
import type { SeenRuler, StonePatch, TestFactor } from '../../records/testStone.ts';
import type { Chip } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { readPatches } from '../../studio/trials/reading/readPatches.ts';
import { findingCautions, layoutCautions } from '../../studio/trials/reading/testStoneCautions.ts';
import type { MeasureSide, MeasuringHooks } from '../comparison/measureInput.ts';
import { judgePatches } from './judgeTestStone.ts';
import { patchZones } from './patchZones.ts';
import { keptPartsIn } from './reading/keptParts.ts';
import { measurePatches } from './reading/measurePatches.ts';

/** A test stone and one print of it as files. */
export interface TestPhotographs {
  readonly stone: MeasureSide;
  readonly proof: MeasureSide;
  readonly sizeMm: Point;
  readonly patches: readonly StonePatch[];
  readonly factors: readonly TestFactor[];
  readonly chips: readonly Chip[];
  /** A ruler seen on the stone's photograph. */
  readonly ruler: SeenRuler | null;
}

export interface TestPhotographsRead {
  readonly record: ComparisonRecord;
  /** Empty where the print could not be brought onto the stone. */
  readonly findings: readonly PatchFinding[];
  readonly cautions: readonly TestStoneCaution[];
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/**
 * Reads a test stone from files, without a data folder.
 * @returns the faults of `judgePatches` and of `measurePatches`
 */
export async function readTestPhotographs(
  { patches, factors, ruler, ...sides }: TestPhotographs,
  hooks: MeasuringHooks,
): Promise<Result<TestPhotographsRead>> {
  const fault = judgePatches({ sizeMm: sides.sizeMm, patches, factors });
  if (fault) return fail(fault);
  const measured = await measurePatches(
    { ...sides, zones: patchZones(patches, factors), cornersInOrder: sides.proof.corners !== null },
    keptPartsIn(null),
    hooks,
  );
  if (!measured.ok) return measured;
  const { record, files } = measured.value;
  const { corners } = sides.stone;
  const drawn = corners && { photograph: '', corners, repeat: null, flat: null };
  const layout = layoutCautions({ sizeMm: sides.sizeMm, patches, factors, drawn, ruler });
  const findings = record.verdict === 'ok' ? readPatches(patches, record, []) : [];
  return ok({ record, files, findings, cautions: [...layout, ...findingCautions(findings)] });
}
