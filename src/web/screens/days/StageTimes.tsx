import type { StudioSettings } from '../../../records/studio.ts';
import { handStages, timeFields, timesTyped } from '../../managers/stageTimesForm.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import type { TypedForm } from '../useTypedForm.ts';

/** How long stages take in this room, in place of the starting values. */
export function StageTimes({ form }: { form: TypedForm<StudioSettings, Typed> }) {
  const count = timesTyped(form.values);
  return (
    <fieldset>
      <legend className="big">{say('How long stages take here')}</legend>
      <p className="studio-lead">
        {say(
          'With laying out and clearing away. Stages without a line are planned by starting values, which are from memory and vary much.',
        )}
      </p>
      {Array.from({ length: count }, (_, index) => `time${index}`).map((t) => (
        <StageTime key={t} form={form} t={t} />
      ))}
      <div>
        <Button onClick={() => form.set(timeFields(count, null))}>{say('Add a stage')}</Button>
      </div>
    </fieldset>
  );
}

function StageTime({ form, t }: { form: TypedForm<StudioSettings, Typed>; t: string }) {
  const { values, set, troubleOf } = form;
  const stage = values[`${t}.stage`] ?? '';
  const name = handStages.find(([one]) => one === stage)?.[1] ?? say('a stage');
  const minutes = (part: 'low' | 'high', label: string) => (
    <Field
      label={label}
      unit="min"
      inputMode="numeric"
      autoComplete="off"
      value={values[`${t}.${part}`] ?? ''}
      trouble={troubleOf(`${t}.${part}`)}
      onChange={(event) => set({ [`${t}.${part}`]: event.target.value })}
    />
  );
  return (
    <div className="studio-time" role="group" aria-label={say('How long: {name}', { name })}>
      <div>
        <Choice
          label={say('Stage')}
          value={stage}
          options={[['', say('none: take this line out')], ...handStages]}
          onChoose={(next) => set({ [`${t}.stage`]: next })}
        />
        {troubleOf(`${t}.stage`) && <p className="field-trouble">{troubleOf(`${t}.stage`)}</p>}
      </div>
      {minutes('low', say('At least'))}
      {minutes('high', say('At most'))}
      <Picks
        label={say('It takes')}
        value={values[`${t}.people`] === '2' ? '2' : '1'}
        options={[
          ['1', say('one person')],
          ['2', say('two people')],
        ]}
        onPick={(people) => set({ [`${t}.people`]: people })}
      />
    </div>
  );
}
