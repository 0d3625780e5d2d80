import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { saveStone } from '../../client/stones.ts';
import { stoneColourWords } from '../../managers/stoneColours.ts';
import {
  type StoneFacts,
  stoneFactsOf,
  stoneFactTroubles,
  stoneFactWords,
  stoneOfFacts,
} from '../../managers/stoneFacts.ts';
import { sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { StoneFactFields } from './StoneFactFields.tsx';
import { StoneForm } from './StoneForm.tsx';
import { StoneSection } from './StoneSection.tsx';

/** What the stone is, and a form to correct it. */
export function StoneFactsSection({ stone }: { stone: StoneEntry }) {
  const { widthMm, heightMm, colour, densityGPerCm3, note } = stone;
  return (
    <StoneSection
      title={say('Size and kind')}
      change={say('Correct name, size, corners')}
      changeable={!stone.putBy}
      form={(onLeave) => <FactsForm stone={stone} onLeave={onLeave} />}
    >
      <dl className="stone-facts">
        <div>
          <dt>{say('Width × height')}</dt>
          <dd>{sizeWords(widthMm, heightMm)}</dd>
        </div>
        <div>
          <dt>{say('Colour')}</dt>
          <dd>{colour === '' ? say('not written down') : stoneColourWords(colour)}</dd>
        </div>
        <div>
          <dt>{say('Density')}</dt>
          <dd>
            {densityGPerCm3 === null
              ? say('2.5 to 2.7 g/cm³, the trade’s range')
              : say('{densityGPerCm3} g/cm³, typed', { densityGPerCm3 })}
          </dd>
        </div>
        {note !== '' && (
          <div>
            <dt>{say('Note')}</dt>
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
      label={say('Size and kind')}
      act={say('Save the stone')}
      form={form}
      words={stoneFactWords}
      onLeave={onLeave}
    >
      <StoneFactFields form={form} autoFocus />
    </StoneForm>
  );
}
