import './Editions.css';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { Edition } from '../../../records/edition.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { editionsKey, listEditions } from '../../client/editions.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { NoApproval } from './NoApproval.tsx';
import { PlanEdition } from './PlanEdition.tsx';

/** The editions of a work, and planning one. */
export function EditionsOfWork({ work }: { work: WorkEntry }) {
  const found = useQuery({ queryKey: editionsKey(work.id), queryFn: () => listEditions(work.id) });
  const editions = (found.data ?? []).filter(({ putBy }) => !putBy);
  const gone = work.stage === 'regrained';
  const shelved = (found.data ?? []).filter(({ putBy }) => putBy);
  return (
    <>
      <PageHead
        stamp={`${work.stone.name} · ${work.title}`}
        headline={
          editions.length > 0
            ? say('Editions of this work')
            : gone
              ? say('No edition was planned')
              : say('How many prints shall there be?')
        }
      />
      <div className="edition-body">
        {!gone && <NoApproval workId={work.id} />}
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
        {found.data && !gone && <PlanEdition work={work} first={editions.length === 0} />}
        {found.data && gone && (
          <Fold title={say('Enter an edition that was printed before')}>
            <PlanEdition work={work} first={false} />
          </Fold>
        )}
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
