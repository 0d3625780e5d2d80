import { useState } from 'react';
import type { StonePatch } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { laidInBox, outlineBox, patchIdTrouble } from '../../managers/testStones/patchDrawing.ts';
import { patchWords } from '../../managers/testStones/patchLetters.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';
import { PointFields } from '../work/PointFields.tsx';
import type { PatchDesk } from './usePatchDesk.ts';

type Box = ReturnType<typeof outlineBox>;

/** Where the patch in hand lies and how large it is, as a whole and point by point; and what it goes by. */
export function PatchPlace({
  desk: patchDesk,
  patch,
  stoneMm,
}: {
  desk: PatchDesk;
  patch: StonePatch;
  stoneMm: Point;
}) {
  const { desk, state } = patchDesk;
  const box = outlineBox(patch.polygonMm);
  const lay = (part: keyof Box, axis: 0 | 1) => (value: number | null) => {
    if (value === null) return;
    const next: Point = axis === 0 ? [value, box[part][1]] : [box[part][0], value];
    desk.change(patch.id, { polygonMm: laidInBox(patch.polygonMm, { ...box, [part]: next }, stoneMm) });
  };
  const round = (value: number) => Math.round(value * 100) / 100;
  const sides = [
    { label: say('From the left'), of: 'fromMm', axis: 0, least: 0 },
    { label: say('From the top'), of: 'fromMm', axis: 1, least: 0 },
    { label: say('Width'), of: 'sizeMm', axis: 0, least: 0.5 },
    { label: say('Height'), of: 'sizeMm', axis: 1, least: 0.5 },
  ] as const;
  return (
    <section className="patch-place" aria-label={say('Where {id} lies', { id: patchWords(patch) })}>
      <div className="test-stone-fields">
        {sides.map(({ label, of, axis, least }) => (
          <NumberField
            key={label}
            label={label}
            unit="mm"
            value={round(box[of][axis])}
            least={least}
            most={stoneMm[axis]}
            onValue={lay(of, axis)}
          />
        ))}
      </div>
      <PointFields desk={desk} state={state} outline={patch.polygonMm} />
      {patch.row === null && <GoesBy key={patch.id} desk={patchDesk} patch={patch} />}
      <Button kind="quiet" onClick={() => desk.remove(patch.id)}>
        {say('Take {id} away', { id: patchWords(patch) })}
      </Button>
    </section>
  );
}

/** The name of a patch that was drawn by hand; taken on once the line is left, for it stands in every reading. */
function GoesBy({ desk, patch }: { desk: PatchDesk; patch: StonePatch }) {
  const [typed, setTyped] = useState(patch.id);
  const others = desk.patches.filter((one) => one !== patch).map(({ id }) => id);
  const trouble = patchIdTrouble(typed, others, desk.grid !== null);
  const take = () => {
    if (trouble === null && typed.trim() !== patch.id) desk.rename(patch.id, typed.trim());
  };
  return (
    <Field
      label={say('It goes by')}
      hint={say('Short: it stands on the stone. What was corrected or read by eye stays with the old name.')}
      autoComplete="off"
      value={typed}
      trouble={trouble}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take();
      }}
    />
  );
}
