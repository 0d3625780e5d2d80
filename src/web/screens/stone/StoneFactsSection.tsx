import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { saveStone } from '../../client/stones.ts';
import {
  type StoneFacts,
  stoneFactsOf,
  stoneFactTroubles,
  stoneFactWords,
  stoneOfFacts,
} from '../../managers/stoneFacts.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { StoneFactFields } from './StoneFactFields.tsx';
import { StoneForm } from './StoneForm.tsx';
import { StoneSection } from './StoneSection.tsx';

/** What the stone is, and a form to correct it. */
export function StoneFactsSection({ stone }: { stone: StoneEntry }) {
  const { widthMm, heightMm, colour, densityGPerCm3, note } = stone;
  return (
    <StoneSection
      title="Size and kind"
      change="Correct name, size, corners"
      changeable={!stone.archived}
      form={(onLeave) => <FactsForm stone={stone} onLeave={onLeave} />}
    >
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
    </StoneSection>
  );
}

function FactsForm({ stone, onLeave }: { stone: StoneEntry; onLeave: () => void }) {
  const form = useTypedForm<StoneEntry, StoneFacts>({
    entry: stone,
    typedOf: stoneFactsOf,
    check: stoneFactTroubles,
    send: (facts, entry) => saveStone(stone.id, entry!.version, stoneOfFacts(facts)),
  });
  return (
    <StoneForm
      label="Size and kind"
      act="Save the stone"
      form={form}
      words={stoneFactWords}
      onLeave={onLeave}
    >
      <StoneFactFields form={form} autoFocus />
    </StoneForm>
  );
}
