import type { CoverageInterval } from '../../records/comparison.ts';
import type { PatchFinding } from '../../records/patchReading.ts';
import type { TestFactor } from '../../records/testStone.ts';
import { csvLine } from '../trials/csvLine.ts';

/**
 * Findings as comma-separated text that `stonetone trial analyse` takes: one patch a line; guide lines and stop-outs are left
 * out. What a patch got of a factor stands under the factor's name, `not known` where nobody said. An unread patch has
 * blank readings. Several stones' tables can be put under each other.
 * @param stone what the stone is called, as a block.
 */
export function findingsTable(
  stone: string,
  factors: readonly TestFactor[],
  findings: readonly PatchFinding[],
): string {
  const names = factors.map(({ name }) => name);
  const head = [
    'stone',
    'patch',
    'square',
    'strip',
    'row',
    'column',
    'intention',
    ...names.map((name) => (fixed.has(name.toLowerCase()) ? `${name} given` : name)),
    'drawn',
    'drawnLow',
    'drawnHigh',
    'printed',
    'printedLow',
    'printedHigh',
    'kept',
    'hold',
    'holdBy',
    'least',
    'most',
    'held',
  ];
  const rows = findings
    .filter(({ intention }) => intention === 'image' || intention === 'control')
    .map(({ camera, hold, ...patch }) => [
      stone,
      patch.patch,
      patch.square,
      patch.strip ?? 'none',
      patch.row === null ? 'none' : String(patch.row),
      patch.column === null ? 'none' : String(patch.column),
      patch.intention,
      ...names.map((name) => patch.treatment[name] ?? 'not known'),
      ...cells(camera.drawn),
      ...cells(camera.printed),
      camera.kept === null ? '' : camera.kept.value.toFixed(4),
      hold ?? '',
      patch.holdBy ?? '',
      camera.least ?? '',
      camera.most ?? '',
      hold === null ? '' : hold === 'held' ? '1' : '0',
    ]);
  return [head, ...rows].map(csvLine).join('');
}

const fixed = new Set([
  'stone',
  'patch',
  'square',
  'strip',
  'row',
  'column',
  'intention',
  'drawn',
  'printed',
  'kept',
  'hold',
  'held',
  'least',
  'most',
]);

function cells(read: CoverageInterval | null): string[] {
  return read === null ? ['', '', ''] : [read.coverage, read.low, read.high].map((value) => value.toFixed(4));
}
