import { useQuery } from '@tanstack/react-query';
import { listWorks, worksKey } from '../../client/workList.ts';
import { type InkTyped, inkFieldWords, inkVerdictWords, weighingWords } from '../../managers/inkForm.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import type { TypedForm } from '../useTypedForm.ts';

/** So many works are offered, those that were changed last. */
const worksOffered = 200;

/** The fields of a mix of ink; what the prints said is asked once there is one. */
export function InkFields<Entry>({ form, judged }: { form: TypedForm<Entry, InkTyped>; judged: boolean }) {
  const line = (field: keyof InkTyped, more: { unit?: string; hint?: string; type?: string } = {}) => (
    <Field
      label={inkFieldWords[field]}
      {...more}
      {...(more.unit !== undefined ? { inputMode: 'decimal' as const } : {})}
      autoComplete="off"
      maxLength={200}
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  const weigh = weighingWords(form.values);
  return (
    <>
      {line('name', { hint: say('As it is written on the tin, such as “mudbank black”.') })}
      <div className="fields">
        <MadeFor form={form} />
        {line('madeOn', { type: 'date' })}
      </div>
      <div className="fields">
        {line('softInk', { hint: say('As the maker calls it.') })}
        {line('stiffInk')}
      </div>
      <div className="fields">
        {line('softParts', { unit: say('parts') })}
        {line('stiffParts', { unit: say('parts') })}
        {line('inkGrams', { unit: 'g' })}
      </div>
      <div className="fields">
        {line('modifier', { hint: say('Magnesium carbonate dulls and shortens: from practice.') })}
        {line('modifierPercent', { unit: '%', hint: say('By weight, on the ink alone.') })}
      </div>
      <p className="ink-weigh" role="status">
        {weigh}
      </p>
      {judged && (
        <>
          <Picks
            label={inkFieldWords.verdict}
            value={form.values.verdict}
            options={[['', say('not judged yet')], ...Object.entries(inkVerdictWords)]}
            onPick={(verdict) => form.set({ verdict })}
          />
          {line('verdictWords')}
        </>
      )}
      <Words
        label={inkFieldWords.note}
        maxLength={10_000}
        value={form.values.note}
        onChange={(event) => form.set({ note: event.target.value })}
      />
    </>
  );
}

function MadeFor<Entry>({ form }: { form: TypedForm<Entry, InkTyped> }) {
  const works = useQuery({
    queryKey: [...worksKey, 'offered'],
    queryFn: async ({ signal }) =>
      (await listWorks({ search: '', putBy: 'all', stage: null }, null, signal, worksOffered)).works,
  });
  const { workId } = form.values;
  const offered = (works.data ?? []).map(
    ({ id, title, stoneName }) => [id, say('{title}, on {stoneName}', { title, stoneName })] as const,
  );
  const missing = workId !== '' && !offered.some(([id]) => id === workId);
  return (
    <Choice
      label={inkFieldWords.workId}
      value={workId}
      options={[
        ['', say('no work in particular')],
        ...(missing ? [[workId, say('another work')] as const] : []),
        ...offered,
      ]}
      onChoose={(chosen) => form.set({ workId: chosen })}
    />
  );
}
