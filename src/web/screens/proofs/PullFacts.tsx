import { useState } from 'react';
import { pullKinds } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { savePull } from '../../client/pulls.ts';
import {
  type PullFactsTyped,
  pullFactsOf,
  pullFactsTyped,
  pullFactTroubles,
  pullFactWords,
} from '../../managers/proofs/pullFacts.ts';
import { pullAgeWords, pullKindWords } from '../../managers/proofs/pullWords.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { useReturnFocus } from '../useReturnFocus.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { useProofsChanged } from './useProofs.ts';

const fields = Object.keys(pullFactWords) as (keyof PullFactsTyped)[];
const numbers: readonly string[] = ['number', 'charges', 'passes', 'pressureEighths'];

/** What is known of a pull, to be read; and to be corrected where something is wrong. */
export function PullFacts({ work, pull }: { work: WorkEntry; pull: PullEntry }) {
  const [correcting, setCorrecting] = useState(false);
  const opener = useReturnFocus(correcting);
  const typed = pullFactsTyped(pull);
  const ages = pull.photographs.map(({ age }) => age?.minutes ?? null);
  if (correcting) return <FactsForm work={work} pull={pull} onLeave={() => setCorrecting(false)} />;
  return (
    <section aria-labelledby="facts-head" className="pull-facts">
      <h2 id="facts-head">{say('What is known of it')}</h2>
      <dl>
        {fields
          .filter((field) => field !== 'number' && (field !== 'remarks' || typed.remarks !== ''))
          .map((field) => (
            <div key={field}>
              <dt>{pullFactWords[field]}</dt>
              <dd>
                {shown(field, typed, pull) ?? <span className="proofs-unknown">{say('not known')}</span>}
              </dd>
            </div>
          ))}
        {ages.length > 0 && (
          <div>
            <dt>{say('Photographed')}</dt>
            <dd>{say('{ages} after it was pulled', { ages: ages.map(pullAgeWords).join(', ') })}</dd>
          </div>
        )}
      </dl>
      <Button ref={opener} onClick={() => setCorrecting(true)}>
        {say('Correct a fact')}
      </Button>
    </section>
  );
}

function shown(field: keyof PullFactsTyped, typed: PullFactsTyped, pull: PullEntry): string | null {
  if (field === 'kind') return pullKindWords[pull.kind];
  if (field === 'madeAt') return pull.madeAt === null ? null : dayWords(pull.madeAt);
  return typed[field] === '' ? null : typed[field];
}

function FactsForm({ work, pull, onLeave }: { work: WorkEntry; pull: PullEntry; onLeave: () => void }) {
  const changed = useProofsChanged(work.id);
  const form = useTypedForm<PullEntry, PullFactsTyped>({
    entry: pull,
    typedOf: (entry) => pullFactsTyped(entry ?? pull),
    check: pullFactTroubles,
    send: (typed, entry) => savePull(work.id, pull.id, entry!.version, pullFactsOf(typed, entry!)),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) {
      onLeave();
      await changed();
    }
    return kept;
  };
  const line = (field: keyof PullFactsTyped) => (
    <Field
      key={field}
      label={pullFactWords[field]}
      autoComplete="off"
      maxLength={200}
      {...(numbers.includes(field) && { inputMode: 'decimal' as const })}
      {...(field === 'madeAt' && { type: 'datetime-local' })}
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  return (
    <SaveForm
      label={say('Facts of pull {number}', { number: pull.number })}
      act={say('Save the facts')}
      actKind="plain"
      form={form}
      words={pullFactWords}
      onSave={save}
      onLeave={onLeave}
    >
      {line('number')}
      <Choice
        label={pullFactWords.kind}
        value={form.values.kind}
        options={pullKinds.map((kind) => [kind as string, pullKindWords[kind]] as const)}
        onChoose={(kind) => form.set({ kind })}
      />
      {line('paper')}
      <Picks
        label={pullFactWords.damp}
        value={form.values.damp}
        options={[
          ['damp', say('damp')],
          ['dry', say('dry')],
          ['', say('not known')],
        ]}
        onPick={(damp) => form.set({ damp })}
      />
      {(['madeAt', 'ink', 'roller', 'charges', 'passes', 'pressureEighths', 'packing', 'who'] as const).map(
        line,
      )}
      <Words
        label={pullFactWords.remarks}
        maxLength={10_000}
        value={form.values.remarks}
        onChange={(event) => form.set({ remarks: event.target.value })}
      />
    </SaveForm>
  );
}
