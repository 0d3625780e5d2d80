import { useState } from 'react';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { saveStone } from '../../client/stones.ts';
import {
  type StoneFacts,
  stoneFactsOf,
  stoneFactTroubles,
  stoneFactWords,
  stoneOfFacts,
} from '../../managers/stoneFacts.ts';
import { Button } from '../../parts/Button.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { useReturnFocus } from '../useReturnFocus.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { StoneFactFields } from './StoneFactFields.tsx';
import { useKeptStone } from './useKeptStone.ts';

/** What the stone is, and a form to correct it. */
export function StoneFactsSection({ stone }: { stone: StoneEntry }) {
  const [open, setOpen] = useState(false);
  const opener = useReturnFocus(open);
  const { widthMm, heightMm, colour, densityGPerCm3, note } = stone;
  return (
    <section aria-label="Size and kind">
      <h2 className="big">Size and kind</h2>
      {open ? (
        <FactsForm stone={stone} onLeave={() => setOpen(false)} />
      ) : (
        <>
          <dl className="stone-facts">
            <div>
              <dt>Width × height</dt>
              <dd>
                {widthMm} × {heightMm} mm
              </dd>
            </div>
            <div>
              <dt>Colour</dt>
              <dd>{colour === '' ? 'not written down' : colour}</dd>
            </div>
            <div>
              <dt>Density</dt>
              <dd>
                {densityGPerCm3 === null
                  ? '2.5 to 2.7 g/cm³, the trade’s range'
                  : `${densityGPerCm3} g/cm³, typed`}
              </dd>
            </div>
            {note !== '' && (
              <div>
                <dt>Note</dt>
                <dd>{note}</dd>
              </div>
            )}
          </dl>
          {!stone.archived && (
            <Button ref={opener} onClick={() => setOpen(true)}>
              Correct name, size, corners
            </Button>
          )}
        </>
      )}
    </section>
  );
}

function FactsForm({ stone, onLeave }: { stone: StoneEntry; onLeave: () => void }) {
  const keep = useKeptStone();
  const form = useTypedForm<StoneEntry, StoneFacts>({
    entry: stone,
    typedOf: stoneFactsOf,
    check: stoneFactTroubles,
    send: (facts, entry) => saveStone(stone.id, entry!.version, stoneOfFacts(facts)),
  });
  const save = async () => {
    const saved = await form.save();
    if (saved) {
      keep(saved);
      onLeave();
    }
    return saved;
  };
  return (
    <SaveForm
      label="Size and kind"
      act="Save the stone"
      actKind="plain"
      form={form}
      words={stoneFactWords}
      onSave={save}
      onLeave={onLeave}
    >
      <StoneFactFields form={form} autoFocus />
    </SaveForm>
  );
}
