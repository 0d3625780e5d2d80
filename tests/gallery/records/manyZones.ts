import type { Change, ComparisonRecord } from '../../../src/records/comparison.ts';
import { lowWater } from './lowWater.ts';
import { zoneOf } from './zoneOf.ts';

const media = ['wash', 'crayon', 'pen', 'rubbing ink'];

function changeOf(drawn: number, printed: number): Change {
  if (drawn >= 0.1 && printed <= 0.4 * drawn) return 'lost';
  if (drawn <= 0.85 && printed >= 0.93) return 'filled';
  if (Math.abs(printed - drawn) <= 0.05) return 'held';
  return printed > drawn ? 'darker' : 'lighter';
}

/** A test stone of sixty patches, fifteen steps in each of four media. */
export const manyZones: ComparisonRecord = {
  ...lowWater,
  parameters: { ...lowWater.parameters, sizeMm: [400, 300] },
  zones: media.flatMap((medium, row) =>
    Array.from({ length: 15 }, (_, step) => {
      const drawn = 0.04 + step * 0.066;
      const printed = Math.min(1, Math.max(0, drawn * (1 + 0.08 * row) - 0.09 * (1 - drawn) * (3 - row)));
      const name = `test patch ${step + 1} of ${medium}, left of the long strip`;
      return zoneOf(`T${row + 1}-${step + 1}`, name, medium, drawn, printed, changeOf(drawn, printed));
    }),
  ),
};
