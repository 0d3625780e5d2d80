import type { Hold } from '../../../records/patchReading.ts';
import type { TestFactor } from '../../../records/testStone.ts';
import type { TestStoneFindings, TrialUnit } from '../../../records/testStoneAnswer.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { patchName } from '../places/patchName.ts';

/** One patch of a trial as its answer needs it. */
export interface TrialPatchRow {
  readonly stone: string;
  readonly patch: string;
  /** What it is called wherever people read of it. */
  readonly name: string;
  /** What it belongs to at each size, named unlike any other of that size. */
  readonly units: Readonly<Record<TrialUnit, string>>;
  /** A level for every factor of the trial. */
  readonly levels: Readonly<Record<string, string>>;
  /** Middle of the patch, stone mm. */
  readonly centreMm: Point;
  /** Of its stone's rectangle. */
  readonly sizeMm: Point;
  readonly hold: Hold | null;
  /** Printed coverage, and what was drawn; null where not read. */
  readonly printed: number | null;
  readonly drawn: number | null;
  readonly control: boolean;
}

/** The patches of a trial that were meant to print, and what was left out of them. */
export interface TrialPatches {
  readonly rows: readonly TrialPatchRow[];
  readonly factors: readonly TestFactor[];
  readonly prints: number;
  /** In plain sentences. */
  readonly leftOut: readonly string[];
}

/**
 * Brings the stones of a trial together. Guide lines and stop-outs are no part of it; patches with a treatment that isn't
 * known can't be compared and are left out, and said to be.
 * @param stones at least one; their factors count as one by name.
 */
export function trialPatches(stones: readonly TestStoneFindings[]): TrialPatches {
  const factors = [...new Map(stones.flatMap((one) => one.factors).map((one) => [one.name, one])).values()];
  const all = stones.flatMap((stone) =>
    stone.findings
      .filter(({ intention }) => intention === 'image' || intention === 'control')
      .map((finding) => ({ stone, finding })),
  );
  const known = all.filter(({ finding }) => factors.every(({ name }) => finding.treatment[name]));
  const rows = known.map(({ stone: { stone, sizeMm }, finding }): TrialPatchRow => {
    const square = `${stone} ${finding.square}`;
    return {
      stone,
      patch: finding.patch,
      name: patchName({ id: finding.patch, row: finding.row, column: finding.column }),
      units: {
        stone,
        strip: finding.strip === null ? square : `${stone} strip ${finding.strip}`,
        square,
        patch: `${stone} ${finding.patch}`,
      },
      levels: finding.treatment,
      centreMm: middleOf(finding.polygonMm),
      sizeMm,
      hold: finding.hold,
      printed: finding.camera.printed?.coverage ?? null,
      drawn: finding.camera.drawn?.coverage ?? null,
      control: finding.intention === 'control',
    };
  });
  const unknown = all.length - known.length;
  return {
    rows,
    factors,
    prints: Math.max(0, ...stones.map(({ prints }) => prints)),
    leftOut:
      unknown === 0
        ? []
        : [
            `What ${unknown} of ${all.length} patches got is not known: they can't be compared, and were left out.`,
          ],
  };
}

/** Middle of the box round a polygon. */
function middleOf(polygon: readonly Point[]): Point {
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return [middle(polygon.map(([x]) => x)), middle(polygon.map(([, y]) => y))];
}
