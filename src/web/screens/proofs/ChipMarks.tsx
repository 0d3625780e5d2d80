import './Marks.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Point } from '../../../science/geometry/point.ts';
import { openPhotograph } from '../../client/photographs.ts';
import { boxOf, movedChip, nextInRow, scaledChip, type TypedChip } from '../../managers/chipBoxes.ts';
import { Button } from '../../parts/Button.tsx';
import { ChipBoard } from '../../parts/ChipBoard.tsx';
import { KeyStride } from '../../parts/KeyStride.tsx';
import { Loupe } from '../../parts/Loupe.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';

/** The darkest that is typed for a chip, D: black velvet is near 2.5. Our rule. */
const darkest = 4;

/** The grey chips on the photograph of a print: where they lie, and how dark they are known to be. */
export function ChipMarks({
  photograph: id,
  chips,
  before,
  onChips,
}: {
  photograph: string;
  chips: readonly TypedChip[];
  /** Those of the photograph before: a new chip is taken for the next of them. */
  before: readonly TypedChip[];
  onChips: (chips: readonly TypedChip[]) => void;
}) {
  const [active, setActive] = useState<number | null>(chips.length > 0 ? 0 : null);
  const photograph = useQuery({
    queryKey: ['photograph', id],
    queryFn: () => openPhotograph(id),
    staleTime: Number.POSITIVE_INFINITY,
  }).data;
  if (!photograph) return <p role="status">{say('Opening the photograph …')}</p>;
  const size: Point = [photograph.widthPx, photograph.heightPx];
  const add = (polygonPx: readonly Point[]) => {
    const like = before[chips.length];
    const name = like?.name ?? say('chip {count}', { count: chips.length + 1 });
    onChips([...chips, { name, polygonPx, density: like?.density ?? null }]);
    setActive(chips.length);
  };
  const change = (index: number, changes: Partial<TypedChip>) =>
    onChips(chips.map((chip, at) => (at === index ? { ...chip, ...changes } : chip)));
  const remove = (index: number) => {
    onChips(chips.filter((_, at) => at !== index));
    setActive(chips.length > 1 ? Math.max(0, index - 1) : null);
  };
  const held = active === null ? undefined : chips[active];
  const next = nextInRow(chips, size);
  return (
    <div className="print-marks">
      <div
        className="print-marks-board"
        style={{ '--board-aspect': photograph.widthPx / photograph.heightPx } as React.CSSProperties}
      >
        <ChipBoard
          photograph={photograph}
          chips={chips}
          active={active}
          onActive={setActive}
          onChange={(index, polygonPx) => change(index, { polygonPx })}
          onDrawn={add}
          onRemove={remove}
        />
      </div>
      <div className={held ? 'print-marks-words' : undefined}>
        {held && active !== null && (
          <>
            <div className="chip-loupe">
              <Loupe
                photograph={photograph}
                centrePx={middle(held.polygonPx)}
                magnified={1}
                onPush={(by) => change(active, { polygonPx: movedChip(held.polygonPx, by, size) })}
              />
              <span style={sizeOf(held.polygonPx)} />
            </div>
            <div className="chip-words">
              <NumberField
                key={active}
                label={say('Density of chip {active}', { active: active + 1 })}
                unit="D"
                hint={say('As its card says: 0.05 is white, 1.5 nearly black.')}
                value={held.density}
                least={0}
                most={darkest}
                needed={false}
                onValue={(density) => change(active, { density })}
              />
              <div className="print-marks-closer">
                <KeyStride unit="px" />
                {(
                  [
                    [say('Larger'), 1.15],
                    [say('Smaller'), 1 / 1.15],
                  ] as const
                ).map(([words, times]) => (
                  <Button
                    key={words}
                    kind="quiet"
                    onClick={() => change(active, { polygonPx: scaledChip(held.polygonPx, times, size) })}
                  >
                    {words}
                  </Button>
                ))}
                <Button kind="quiet" onClick={() => remove(active)}>
                  {say('Take chip {active} away', { active: active + 1 })}
                </Button>
              </div>
            </div>
          </>
        )}
        {!held && (
          <p>
            {say(
              'Press on each chip, or drag a box inside it; then see in the loupe that the box holds nothing else.{count}',
              {
                count:
                  before.length > 0 &&
                  say(' Their densities are taken from the photograph before, in order: {densities}.', {
                    densities: densities(before),
                  }),
              },
            )}
          </p>
        )}
      </div>
      <div className="chip-acts">
        {chips.length === 0 && before.length > 0 && (
          <Button
            onClick={() => {
              onChips(
                before.map((chip) => ({ ...chip, polygonPx: movedChip(chip.polygonPx, [0, 0], size) })),
              );
              setActive(0);
            }}
          >
            {say('Lay all {count} as on the photograph before', { count: before.length })}
          </Button>
        )}
        {next && <Button onClick={() => add(next)}>{say('One more in the row')}</Button>}
        {chips.length > 0 && <p className="soft">{densities(chips)}</p>}
      </div>
    </div>
  );
}

function middle(polygonPx: readonly Point[]): Point {
  const { from, to } = boxOf(polygonPx);
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

/** The box as large as the loupe shows it, which is at full size. */
function sizeOf(polygonPx: readonly Point[]): { readonly width: number; readonly height: number } {
  const { from, to } = boxOf(polygonPx);
  return { width: to[0] - from[0], height: to[1] - from[1] };
}

function densities(chips: readonly TypedChip[]): string {
  return chips
    .map(({ density }, index) =>
      density === null ? `${index + 1}: ?` : say('{index}: {density} D', { index: index + 1, density }),
    )
    .join(' · ');
}
