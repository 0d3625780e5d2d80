import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { saveStone } from '../../client/stones.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { numberText, numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { Field } from '../../parts/Field.tsx';
import { lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { StoneForm } from './StoneForm.tsx';
import { StoneSection } from './StoneSection.tsx';

const words = { scraper: say('Scraper'), packing: say('Packing'), pressure: say('Pressure') };

/** How the press was set for this stone: scraper, packing, pressure from contact. */
export function PressSetUp({ stone }: { stone: StoneEntry }) {
  const { scraperMm, packing, pressureEighths } = stone.pressSetUp;
  const unknown = scraperMm === null && packing === '' && pressureEighths === null;
  return (
    <StoneSection
      title={say('Press set-up')}
      change={unknown ? say('Write the set-up down') : say('Change the set-up')}
      changeable={!stone.putBy}
      form={(onLeave) => <SetUpForm stone={stone} onLeave={onLeave} />}
    >
      {unknown ? (
        <p className="soft">
          {say('Not written down yet: the next printer would begin again from contact.')}
        </p>
      ) : (
        <dl className="stone-facts">
          <div>
            <dt>{say('Scraper')}</dt>
            <dd>{scraperMm === null ? say('not written down') : lengthWords(scraperMm, 1)}</dd>
          </div>
          <div>
            <dt>{say('Packing')}</dt>
            <dd>{packing === '' ? say('not written down') : packing}</dd>
          </div>
          <div>
            <dt>{say('Pressure')}</dt>
            <dd>{pressureEighths === null ? say('not written down') : pressureWords(pressureEighths)}</dd>
          </div>
        </dl>
      )}
    </StoneSection>
  );
}

function pressureWords(eighths: number): string {
  if (eighths === 0) return say('at contact');
  const turns = say('{eighths, plural, one {1 eighth} other {{eighths} eighths}}', {
    eighths: Math.abs(eighths),
  });
  return eighths > 0
    ? say('{turns} of a turn past contact', { turns })
    : say('{turns} of a turn short of contact', { turns });
}

function SetUpForm({ stone, onLeave }: { stone: StoneEntry; onLeave: () => void }) {
  const form = useTypedForm<StoneEntry, Typed>({
    entry: stone,
    typedOf: (entry) => ({
      scraper: numberText(entry?.pressSetUp.scraperMm ?? null),
      packing: entry?.pressSetUp.packing ?? '',
      pressure: numberText(entry?.pressSetUp.pressureEighths ?? null),
    }),
    check: ({ scraper = '', pressure = '' }) => ({
      scraper: numberTrouble(scraper, 10, 3000, { unit: 'mm' }),
      pressure: numberTrouble(pressure, -80, 80),
    }),
    send: ({ scraper = '', packing = '', pressure = '' }, entry) =>
      saveStone(stone.id, entry!.version, {
        pressSetUp: {
          scraperMm: typedNumber(scraper),
          packing,
          pressureEighths: typedNumber(pressure),
        },
      }),
  });
  return (
    <StoneForm
      label={say('Press set-up')}
      act={say('Save the set-up')}
      form={form}
      words={words}
      onLeave={onLeave}
    >
      <div className="fields">
        <Field
          label={words.scraper}
          unit="mm"
          hint={say('Wider than the image, inside the stone.')}
          inputMode="decimal"
          autoComplete="off"
          autoFocus
          value={form.values.scraper ?? ''}
          trouble={form.troubleOf('scraper')}
          onChange={(event) => form.set({ scraper: event.target.value })}
        />
        <Field
          label={words.pressure}
          unit={say('eighths')}
          hint={say('Of a turn, from contact.')}
          inputMode="decimal"
          autoComplete="off"
          value={form.values.pressure ?? ''}
          trouble={form.troubleOf('pressure')}
          onChange={(event) => form.set({ pressure: event.target.value })}
        />
      </div>
      <Field
        label={words.packing}
        hint={say('Such as: two newsprint, one blotter, tympan.')}
        maxLength={2000}
        value={form.values.packing ?? ''}
        onChange={(event) => form.set({ packing: event.target.value })}
      />
    </StoneForm>
  );
}
