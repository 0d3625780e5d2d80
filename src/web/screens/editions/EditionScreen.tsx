import './Editions.css';
import { useQuery } from '@tanstack/react-query';
import type { Edition } from '../../../records/edition.ts';
import { editionKey, openEdition } from '../../client/editions.ts';
import { heardOrHeld } from '../../client/heardOrHeld.ts';
import { FailedRequest, shownFailure } from '../../client/shownFailure.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PagesOf } from '../../parts/PagesOf.tsx';
import { say } from '../../words/say.ts';
import { NotFound } from '../NotFound.tsx';
import { Curating } from './Curating.tsx';
import { EditionPage } from './EditionPage.tsx';
import { PressLedger } from './PressLedger.tsx';

const views = [
  { path: '', name: say('Plan and papers') },
  { path: 'curate', name: say('Its prints') },
] as const;

/** One edition: its plan and papers, its ledger at the press, its prints with their drift and numbers. */
export default function EditionScreen({ id, view }: { id: string; view: string }) {
  const found = useQuery({
    queryKey: editionKey(id),
    // at the press it must open without the server; the ledger says how old what it shows is
    queryFn: async () => (await heardOrHeld(`edition ${id}`, () => openEdition(id))).value,
    networkMode: 'always',
  });
  if (found.isError && !found.data) {
    if (found.error instanceof FailedRequest && found.error.failure.code === 'not-found') return <NotFound />;
    return (
      <>
        <PageHead stamp={say('Editions')} headline={say('This edition could not be opened')} />
        <div className="edition-body">
          <FailureNotice failure={shownFailure(found.error)} />
          <ButtonLink href="/works">{say('To the works')}</ButtonLink>
        </div>
      </>
    );
  }
  const edition = found.data;
  if (!edition) return <p className="unseen">{say('Opening …')}</p>;
  switch (view) {
    case 'press':
      return <PressLedger edition={edition} />;
    case '':
      return (
        <>
          <EditionViews edition={edition} view={view} />
          <EditionPage edition={edition} />
        </>
      );
    case 'curate':
      return (
        <>
          <EditionViews edition={edition} view={view} />
          <Curating edition={edition} />
        </>
      );
    default:
      return <NotFound within={`/editions/${id}`} />;
  }
}

function EditionViews({ edition, view }: { edition: Edition; view: string }) {
  return (
    <PagesOf
      name={edition.title}
      label={say('This edition')}
      pages={[
        { href: `/works/${edition.workId}/edition`, here: false, words: say('The work') },
        ...views.map(({ path, name }) => ({
          href: `/editions/${edition.id}${path && `/${path}`}`,
          here: path === view,
          words: name,
        })),
      ]}
    />
  );
}
