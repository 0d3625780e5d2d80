import { useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import type { Edition } from '../../../records/edition.ts';
import type { EditionStart } from '../../../records/editionStart.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import {
  addEdition,
  editionKey,
  editionStartKey,
  editionsKey,
  type NewEdition,
  readEditionStart,
} from '../../client/editions.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { editionFieldWords } from '../../managers/editions/editionForm.ts';
import { type StartedField, startHint, startText } from '../../managers/editions/startWords.ts';
import { numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';

/** Planning an edition: how many, and what it takes from the pull that is good to print, each to be changed. */
export function PlanEdition({ work, first }: { work: WorkEntry; first: boolean }) {
  const start = useQuery({
    queryKey: editionStartKey(work.id),
    queryFn: () => readEditionStart(work.id),
  });
  if (start.isError) return <FailureNotice failure={shownFailure(start.error)} />;
  if (!start.data) return <p className="unseen">{say('Opening …')}</p>;
  return <PlanForm key={start.data.pull?.id ?? ''} work={work} first={first} start={start.data} />;
}

const started: readonly StartedField[] = ['paperName', 'damped', 'ink', 'inkedCm2'];

function PlanForm({ work, first, start }: { work: WorkEntry; first: boolean; start: EditionStart }) {
  const queries = useQueryClient();
  const [, go] = useLocation();
  const [title, setTitle] = useState(work.title);
  const [size, setSize] = useState('5');
  const [taken, setTaken] = useState<Readonly<Partial<Record<StartedField, string>>>>(() =>
    Object.fromEntries(started.map((field) => [field, startText(start, field) ?? ''])),
  );
  const saving = useSaving<Edition>();
  const troubles = {
    title: title.trim() === '' ? say('A title is needed.') : null,
    size: numberTrouble(size, 1, 1000, { needed: true, whole: true }),
    inkedCm2: numberTrouble(taken.inkedCm2 ?? '', 0.1, 1e6, { unit: 'cm²' }),
  };
  const plan = async (event: FormEvent) => {
    event.preventDefault();
    if (troubles.title || troubles.size || troubles.inkedCm2) return;
    const draft = { title: title.trim(), size: typedNumber(size)!, ...startedDraft(start, taken) };
    const edition = await saving.send(
      () => addEdition(work.id, draft),
      () => undefined,
    );
    if (edition === null) return;
    queries.setQueryData(editionKey(edition.id), edition);
    void queries.invalidateQueries({ queryKey: editionsKey(work.id) });
    go(`/editions/${edition.id}`);
  };
  const line = (field: StartedField, unit?: string) => (
    <Field
      label={editionFieldWords[field]}
      hint={startHint(start, field, taken[field] ?? '')}
      autoComplete="off"
      maxLength={200}
      value={taken[field] ?? ''}
      trouble={field === 'inkedCm2' ? troubles.inkedCm2 : null}
      {...(unit && { unit, inputMode: 'decimal' as const })}
      onChange={(event) => setTaken({ ...taken, [field]: event.target.value })}
    />
  );
  return (
    <form
      className="edition-new"
      aria-label={say('A new edition')}
      onSubmit={(event) => void plan(event)}
      noValidate
    >
      {!first && <h2 className="big">{say('Another edition')}</h2>}
      <div className="fields">
        <Field
          label={say('Title')}
          value={title}
          maxLength={200}
          trouble={troubles.title}
          onChange={(event) => setTitle(event.target.value)}
        />
        <Field
          label={say('Numbered prints')}
          inputMode="numeric"
          value={size}
          trouble={troubles.size}
          hint={say('Artist’s, printer’s and other proofs come on top.')}
          onChange={(event) => setSize(event.target.value)}
        />
      </div>
      {start.pull && (
        <section className="edition-start" aria-label={say('What it starts from')}>
          <h2 className="big">
            {say('It starts from pull {number}, good to print', { number: start.pull.number })}
          </h2>
          <div className="fields">
            {line('paperName')}
            {line('ink')}
            {line('inkedCm2', 'cm²')}
          </div>
          <Picks
            label={editionFieldWords.damped}
            value={taken.damped || 'unknown'}
            options={[
              ['yes', say('damp')],
              ['no', say('dry')],
              ['unknown', say('not decided')],
            ]}
            onPick={(damped) => setTaken({ ...taken, damped })}
          />
          <p className="soft field-hint">{startHint(start, 'damped', taken.damped ?? '')}</p>
        </section>
      )}
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <div>
        <Button kind={first ? 'act' : 'plain'} type="submit" disabled={saving.pending}>
          {say('Plan the edition')}
        </Button>
      </div>
    </form>
  );
}

/** What of a draft was taken over, as it stands now. */
function startedDraft(
  start: EditionStart,
  taken: Readonly<Partial<Record<StartedField, string>>>,
): Omit<NewEdition, 'title' | 'size'> {
  if (start.pull === null) return {};
  const name = (taken.paperName ?? '').trim();
  return {
    approvalPullId: start.pull.id,
    approvedBy: start.approvedBy?.value ?? '',
    ...(start.approval && { approval: start.approval.value }),
    ink: (taken.ink ?? '').trim(),
    inkedCm2: typedNumber(taken.inkedCm2 ?? ''),
    paper: {
      name,
      damped: (taken.damped || 'unknown') as 'yes' | 'no' | 'unknown',
      // another paper has another weight
      gramsPerM2: name === start.paperName?.value ? (start.gramsPerM2?.value ?? null) : null,
    },
  };
}
