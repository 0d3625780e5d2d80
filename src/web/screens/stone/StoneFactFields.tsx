import './StoneFactFields.css';
import { keptStoneColour, stoneColours, stoneColourWords } from '../../managers/stoneColours.ts';
import { type StoneFacts, stoneFactWords } from '../../managers/stoneFacts.ts';
import { Field } from '../../parts/Field.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import type { TypedForm } from '../useTypedForm.ts';

const corners = ['corner0', 'corner1', 'corner3', 'corner2'] as const;

/** The fields that say what a stone is. */
export function StoneFactFields<Entry>({
  form,
  autoFocus = false,
}: {
  form: TypedForm<Entry, StoneFacts>;
  autoFocus?: boolean;
}) {
  const line = (field: keyof StoneFacts, unit: string) => (
    <Field
      key={field}
      label={stoneFactWords[field]}
      unit={unit}
      inputMode="decimal"
      autoComplete="off"
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  return (
    <>
      <Field
        label={stoneFactWords.name}
        autoFocus={autoFocus}
        hint={say('As it is chalked on its side, such as S-01.')}
        autoComplete="off"
        maxLength={200}
        value={form.values.name}
        trouble={form.troubleOf('name')}
        onChange={(event) => form.set({ name: event.target.value })}
      />
      <div className="fields">
        {line('width', 'mm')}
        {line('height', 'mm')}
      </div>
      <fieldset className="stone-corners">
        <legend>{say('Thickness at the corners')}</legend>
        <p className="soft field-hint">
          {say('As you look down at it, head away from you. Leave out what is not measured.')}
        </p>
        <div>
          {corners.map((field) => (
            <Field
              key={field}
              label={stoneFactWords[field].replace('Thickness ', '')}
              unit="mm"
              inputMode="decimal"
              autoComplete="off"
              value={form.values[field]}
              trouble={form.troubleOf(field)}
              onChange={(event) => form.set({ [field]: event.target.value })}
            />
          ))}
        </div>
      </fieldset>
      <div className="fields">
        <Field
          label={stoneFactWords.colour}
          hint={say('Paler stones are softer.')}
          list="stone-colours"
          autoComplete="off"
          maxLength={100}
          value={stoneColourWords(form.values.colour)}
          onChange={(event) => form.set({ colour: keptStoneColour(event.target.value) })}
        />
        <datalist id="stone-colours">
          {stoneColours().map((colour) => (
            <option key={colour} value={colour} />
          ))}
        </datalist>
        <Field
          label={stoneFactWords.density}
          hint={say('Left out: 2.5 to 2.7, the trade’s range.')}
          unit="g/cm³"
          inputMode="decimal"
          autoComplete="off"
          value={form.values.density}
          trouble={form.troubleOf('density')}
          onChange={(event) => form.set({ density: event.target.value })}
        />
      </div>
      <Words
        rows={1}
        label={stoneFactWords.note}
        hint={say('Chips, veins, old images that come through.')}
        maxLength={10_000}
        value={form.values.note}
        onChange={(event) => form.set({ note: event.target.value })}
      />
    </>
  );
}
