import type { StudioSettings } from '../../../records/studio.ts';
import { handStages, timeFields, timesTyped } from '../../managers/stageTimesForm.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import type { TypedForm } from '../useTypedForm.ts';

/** How long stages take in this room, in place of the starting values. */
export function StageTimes({ form }: { form: TypedForm<StudioSettings, Typed> }) {
  const count = timesTyped(form.values);
  return (
    <fieldset>
      <legend className="big">How long stages take here</legend>
      <p className="studio-lead">
        With laying out and clearing away. Stages without a line are planned by starting values, which are
        from memory and vary much.
      </p>
      {Array.from({ length: count }, (_, index) => `time${index}`).map((t) => (
        <StageTime key={t} form={form} t={t} />
      ))}
      <div>
        <Button onClick={() => form.set(timeFields(count, null))}>Add a stage</Button>
      </div>
    </fieldset>
  );
}

function StageTime({ form, t }: { form: TypedForm<StudioSettings, Typed>; t: string }) {
  const { values, set, troubleOf } = form;
  const stage = values[`${t}.stage`] ?? '';
  const name = handStages.find(([one]) => one === stage)?.[1] ?? 'a stage';
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
    <div className="studio-time" role="group" aria-label={`How long: ${name}`}>
      <div>
        <Choice
          label="Stage"
          value={stage}
          options={[['', 'none: take this line out'], ...handStages]}
          onChoose={(next) => set({ [`${t}.stage`]: next })}
        />
        {troubleOf(`${t}.stage`) && <p className="field-trouble">{troubleOf(`${t}.stage`)}</p>}
      </div>
      {minutes('low', 'At least')}
      {minutes('high', 'At most')}
      <Picks
        label="It takes"
        value={values[`${t}.people`] === '2' ? '2' : '1'}
        options={[
          ['1', 'one person'],
          ['2', 'two people'],
        ]}
        onPick={(people) => set({ [`${t}.people`]: people })}
      />
    </div>
  );
}
