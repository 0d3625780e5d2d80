import './Editions.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Edition } from '../../../records/edition.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { addEdition, editionKey, editionsKey, listEditions } from '../../client/editions.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { NoApproval } from './NoApproval.tsx';

/** The editions of a work, and planning one. */
export function EditionsOfWork({ work }: { work: WorkEntry }) {
  const found = useQuery({ queryKey: editionsKey(work.id), queryFn: () => listEditions(work.id) });
  const editions = (found.data ?? []).filter(({ archived }) => !archived);
  const shelved = (found.data ?? []).filter(({ archived }) => archived);
  return (
    <>
      <PageHead
        stamp={`${work.stone.name} · ${work.title}`}
        headline={
          editions.length === 0 ? say('How many prints shall there be?') : say('Editions of this work')
        }
      />
      <div className="edition-body">
        <NoApproval workId={work.id} />
        {found.isError && <FailureNotice failure={shownFailure(found.error)} />}
        {editions.length > 0 && (
          <ul className="edition-lines">
            {editions.map((edition) => (
              <li key={edition.id}>
                <Link href={`/editions/${edition.id}`}>
                  <span className="big">{edition.title}</span>
                  <span>{linesWords(edition)}</span>
                </Link>
              </li>
            ))}
          </ul>
        )}
        {found.data && <PlanEdition work={work} first={editions.length === 0} />}
        {shelved.length > 0 && (
          <Fold title={say('{count} taken off this work', { count: shelved.length })}>
            <ul className="edition-lines">
              {shelved.map((edition) => (
                <li key={edition.id}>
                  <Link href={`/editions/${edition.id}`}>
                    <span className="big">{edition.title}</span>
                    <span>{linesWords(edition)}</span>
                  </Link>
                </li>
              ))}
            </ul>
          </Fold>
        )}
      </div>
    </>
  );
}

function linesWords({ size, prints }: Edition): string {
  const numbered = prints.filter(({ kind }) => kind === 'edition').length;
  return numbered === 0
    ? say('edition of {size}', { size })
    : say('edition of {size}, {numbered} numbered', { size, numbered });
}

function PlanEdition({ work, first }: { work: WorkEntry; first: boolean }) {
  const queries = useQueryClient();
  const [, go] = useLocation();
  const [title, setTitle] = useState(work.title);
  const [size, setSize] = useState('5');
  const saving = useSaving<Edition>();
  const troubles = {
    title: title.trim() === '' ? say('A title is needed.') : null,
    size: numberTrouble(size, 1, 1000, { needed: true, whole: true }),
  };
  const plan = async (event: FormEvent) => {
    event.preventDefault();
    if (troubles.title || troubles.size) return;
    const draft = { title: title.trim(), size: typedNumber(size)! };
    const edition = await saving.send(
      () => addEdition(work.id, draft),
      () => undefined,
    );
    if (edition === null) return;
    queries.setQueryData(editionKey(edition.id), edition);
    void queries.invalidateQueries({ queryKey: editionsKey(work.id) });
    go(`/editions/${edition.id}`);
  };
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
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <div>
        <Button kind={first ? 'act' : 'plain'} type="submit" disabled={saving.pending}>
          {say('Plan the edition')}
        </Button>
      </div>
    </form>
  );
}
