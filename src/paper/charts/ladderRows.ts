import type { ZoneResult } from '../../records/comparison.ts';

export interface LadderStep {
  readonly zone: ZoneResult;
  /** Column counted from 0 at the left of its row. */
  readonly column: number;
}

/** Steps of one medium that stand beside each other on one row. */
export interface LadderGroup {
  readonly medium: string;
  readonly steps: readonly LadderStep[];
}

export type LadderRow = readonly LadderGroup[];

const familyOrder = ['wash', 'crayon', 'pen', 'solid', 'blank'];

/**
 * Lays zones out as rows of steps: medium by medium (families first, others by name), within a medium
 * from the lightest drawn tone to the darkest, zones without a drawn tone last.
 * @param columns steps on a row, at least 1. An empty list gives no rows.
 */
export function ladderRows(zones: readonly ZoneResult[], columns: number): readonly LadderRow[] {
  const media = [...new Set(zones.map((zone) => zone.medium))].sort(byMedium);
  const rows: LadderGroup[][] = [];
  let column = columns;
  for (const medium of media) {
    const steps = zones.filter((zone) => zone.medium === medium).sort(byDrawnTone);
    for (const [index, zone] of steps.entries()) {
      if (column >= columns) {
        rows.push([]);
        column = 0;
      }
      const row = rows[rows.length - 1]!;
      const begun = row[row.length - 1];
      if (index === 0 || begun === undefined) row.push({ medium, steps: [{ zone, column }] });
      else row[row.length - 1] = { medium, steps: [...begun.steps, { zone, column }] };
      column += 1;
    }
  }
  return rows;
}

function byDrawnTone(a: ZoneResult, b: ZoneResult): number {
  const tone = (zone: ZoneResult) => zone.drawn?.coverage ?? 2;
  return tone(a) - tone(b) || a.id.localeCompare(b.id, 'en');
}

function byMedium(a: string, b: string): number {
  const rank = (medium: string) =>
    familyOrder.includes(medium) ? familyOrder.indexOf(medium) : familyOrder.length;
  return rank(a) - rank(b) || a.localeCompare(b, 'en');
}
