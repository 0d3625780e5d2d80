import './StudioScreen.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { StudioSettings } from '../../../records/studio.ts';
import { dayPlansKey, openStudio, saveStudio, studioKey, weekKey } from '../../client/days.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import {
  peopleTyped,
  personFields,
  studioOf,
  studioTroubles,
  typedStudio,
  weekdayNames,
} from '../../managers/studioForm.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { type TypedForm, useTypedForm } from '../useTypedForm.ts';
import { StageTimes } from './StageTimes.tsx';

/** When the room is open, who works in it when, and how long stages take here. */
export default function StudioScreen() {
  const studio = useQuery({ queryKey: studioKey, queryFn: openStudio });
  return (
    <>
      <PageHead stamp={<Link href="/week">{say('The week')}</Link>} headline={say('People and hours')} />
      {studio.isError && (
        <div className="list-foot">
          <FailureNotice failure={shownFailure(studio.error)} />
        </div>
      )}
      {studio.data && <StudioForm studio={studio.data} />}
    </>
  );
}

function StudioForm({ studio }: { studio: StudioSettings }) {
  const queries = useQueryClient();
  const [saved, setSaved] = useState(false);
  const form = useTypedForm<StudioSettings, Typed>({
    entry: studio,
    typedOf: typedStudio,
    check: studioTroubles,
    send: (typed, kept) => saveStudio(kept?.version ?? 0, studioOf(typed, kept)),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) {
      queries.setQueryData(studioKey, kept);
      void queries.invalidateQueries({ queryKey: weekKey });
      void queries.invalidateQueries({ queryKey: dayPlansKey });
      setSaved(true);
    }
    return kept;
  };
  const people = peopleTyped(form.values);
  return (
    <div className="studio-screen">
      <SaveForm
        label={say('People and hours')}
        act={say('Save people and hours')}
        form={form}
        words={{}}
        onSave={save}
      >
        <p className="studio-lead">
          {say(
            'Steps are planned only while the room is open and somebody who can do them is there; stones rest through the night. Write hours as 09:00–13:00, 14:00–17:00. An empty day is a closed one.',
          )}
        </p>
        <fieldset>
          <legend className="big">{say('The room is open')}</legend>
          <DayFields form={form} prefix="open" />
          <Line
            form={form}
            name="dates"
            label={say('Days that differ')}
            hint={say('Such as 2026-12-25 closed; 2026-12-28 10:00–12:00.')}
          />
          <Line
            form={form}
            name="zone"
            label={say('Time zone of the room')}
            hint={say('Such as Europe/London.')}
          />
        </fieldset>
        {Array.from({ length: people }, (_, index) => index).map((index) => (
          <Person key={index} form={form} index={index} />
        ))}
        <div>
          <Button onClick={() => form.set(personFields(people, null))}>{say('Add a person')}</Button>
        </div>
        <StageTimes form={form} />
      </SaveForm>
      <p role="status" className="studio-saved">
        {saved && !form.trouble ? say('Saved.') : ''}
      </p>
    </div>
  );
}

type Form = TypedForm<StudioSettings, Typed>;

function Person({ form, index }: { form: Form; index: number }) {
  const p = `person${index}`;
  const name = form.values[`${p}.name`] || say('Person {index}', { index: index + 1 });
  return (
    <fieldset>
      <legend className="big">{name}</legend>
      <div className="fields">
        <Line form={form} name={`${p}.name`} label={say('Name, or what they are here')} />
        <Line form={form} name={`${p}.initials`} label={say('Initials')} />
      </div>
      <DayFields form={form} prefix={`${p}.day`} />
      <Line
        form={form}
        name={`${p}.dates`}
        label={say('Days that differ')}
        hint={say('Such as 2026-12-03 away. To take somebody out, empty name and initials.')}
      />
    </fieldset>
  );
}

function DayFields({ form, prefix }: { form: Form; prefix: string }) {
  return (
    <div className="studio-days">
      {weekdayNames.map((day, index) => (
        <Line
          key={day}
          form={form}
          name={`${prefix}${index}`}
          label={day}
          placeholder={prefix === 'open' ? say('closed') : say('away')}
        />
      ))}
    </div>
  );
}

function Line({
  form,
  name,
  ...rest
}: {
  form: Form;
  name: string;
  label: string;
  hint?: string;
  placeholder?: string;
}) {
  return (
    <Field
      {...rest}
      autoComplete="off"
      value={form.values[name] ?? ''}
      trouble={form.troubleOf(name)}
      onChange={(event) => form.set({ [name]: event.target.value })}
    />
  );
}
