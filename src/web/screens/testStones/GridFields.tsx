import type { PatchGrid } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';

type Pair = 'originMm' | 'squareMm' | 'gutterMm';
const pairs: readonly (readonly [Pair, string, string, number])[] = [
  ['originMm', say('First square, from the left'), say('First square, from the top'), -100],
  ['squareMm', say('Width of a square'), say('Height of a square'), 0.5],
  ['gutterMm', say('Bare between columns'), say('Bare between rows'), 0],
];

/** Moves a whole grid: what is typed lays the squares anew at once. */
export function GridFields({ grid, onGrid }: { grid: PatchGrid; onGrid: (grid: PatchGrid) => void }) {
  const set = (pair: Pair, axis: 0 | 1) => (value: number | null) => {
    if (value === null) return;
    const next: Point = axis === 0 ? [value, grid[pair][1]] : [grid[pair][0], value];
    onGrid({ ...grid, [pair]: next });
  };
  const whole = (field: 'rows' | 'columns' | 'steps') => (value: number | null) => {
    if (value !== null) onGrid({ ...grid, [field]: Math.round(value) });
  };
  return (
    <div className="test-stone-fields">
      <NumberField label={say('Rows')} value={grid.rows} least={1} most={100} onValue={whole('rows')} />
      <NumberField
        label={say('Columns')}
        value={grid.columns}
        least={1}
        most={100}
        onValue={whole('columns')}
      />
      {pairs.map(([pair, across, down, least]) => (
        <span key={pair} className="test-stone-pair">
          <NumberField
            label={across}
            unit="mm"
            value={grid[pair][0]}
            least={least}
            most={3000}
            onValue={set(pair, 0)}
          />
          <NumberField
            label={down}
            unit="mm"
            value={grid[pair][1]}
            least={least}
            most={3000}
            onValue={set(pair, 1)}
          />
        </span>
      ))}
      <NumberField
        label={say('Turned clockwise')}
        unit="°"
        value={grid.turnDegrees}
        least={-45}
        most={45}
        onValue={(value) => value !== null && onGrid({ ...grid, turnDegrees: value })}
      />
      <NumberField
        label={say('Deposit steps in a square')}
        hint={say('Side by side; 1: a square is one patch.')}
        value={grid.steps}
        least={1}
        most={12}
        onValue={whole('steps')}
      />
    </div>
  );
}
