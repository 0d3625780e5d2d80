import './WorkScreen.css';
import { useQuery } from '@tanstack/react-query';
import { Redirect, useLocation } from 'wouter';
import type { WorkStage } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import { lastHeard } from '../client/heardOrHeld.ts';
import { FailedRequest, shownFailure } from '../client/shownFailure.ts';
import { openWork, workKey } from '../client/works.ts';
import { ButtonLink } from '../parts/Button.tsx';
import { FailureNotice } from '../parts/FailureNotice.tsx';
import { GrainedAway } from '../parts/GrainedAway.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { PagesOf } from '../parts/PagesOf.tsx';
import { say } from '../words/say.ts';
import { DaysView } from './days/DaysView.tsx';
import { EditionsOfWork } from './editions/EditionsOfWork.tsx';
import { NotFound } from './NotFound.tsx';
import { GumNow } from './rack/StoneStanding.tsx';
import { AboutWork } from './work/AboutWork.tsx';
import { DrawingView } from './work/DrawingView.tsx';
import { EtchView } from './work/EtchView.tsx';
import { PhotographsView } from './work/PhotographsView.tsx';
import { SecondEtchView } from './work/SecondEtchView.tsx';
import { ToTheBench } from './work/ToTheBench.tsx';
import { useWorkDesk } from './work/useWorkDesk.ts';

/** The sides from which a work is looked at, as its line goes; the stone stands beside each of them. */
const views = [
  { path: '', name: say('Drawing') },
  { path: 'etch', name: say('First etch') },
  { path: 'proofs', name: say('Proofs') },
  { path: 'second-etch', name: say('Second etch') },
  { path: 'edition', name: say('Edition') },
  { path: 'days', name: say('Days') },
  { path: 'photographs', name: say('Photographs') },
  { path: 'about', name: say('Its facts') },
] as const;

/** The side that tells of what was done last; null: the drawing is gone. */
const sideOf: Readonly<Record<WorkStage, (typeof views)[number]['path'] | null>> = {
  grained: '',
  drawn: '',
  'first-etch': 'etch',
  'washed-out': 'etch',
  'rolled-up': 'etch',
  'trial-proofs': 'proofs',
  'second-etch': 'second-etch',
  proofs: 'proofs',
  edition: 'edition',
  'closed-down': 'edition',
  regrained: null,
};

/** One work: its stone with the drawing, and beside it what is known and planned. */
export default function WorkScreen({ id, view }: { id: string; view: string }) {
  const found = useQuery({
    queryKey: workKey(id),
    queryFn: (asking) => lastHeard(asking, `work ${id}`, () => openWork(id)),
  });
  if (found.isError && !found.data) {
    const trouble = shownFailure(found.error);
    if (found.error instanceof FailedRequest && trouble.code === 'not-found') return <NotFound />;
    return (
      <>
        <PageHead stamp={say('Works')} headline={say('This work could not be opened')} />
        <div className="list-foot">
          <FailureNotice failure={trouble} />
          <ButtonLink href="/works">{say('To the works')}</ButtonLink>
        </div>
      </>
    );
  }
  if (!found.data) return <p className="unseen">{say('Opening …')}</p>;
  return <OpenWork key={id} entry={found.data} view={view} />;
}

function OpenWork({ entry, view }: { entry: WorkEntry; view: string }) {
  const desk = useWorkDesk(entry);
  return (
    <>
      <PagesOf
        name={entry.title}
        label={say('This work')}
        pages={views.map(({ path, name }) => ({
          href: `/works/${entry.id}${path && `/${path}`}`,
          here: path === view,
          standsHere: path === sideOf[entry.stage],
          words: (
            <>
              {name}
              {path === '' && desk.unsaved && <span className="work-unsaved"> {say('not saved')}</span>}
            </>
          ),
        }))}
      >
        <ToTheBench work={entry} />
      </PagesOf>
      <GumNow work={entry.id} />
      {entry.stage === 'regrained' && (
        <div className="gum-now">
          <GrainedAway work={entry} />
        </div>
      )}
      <ViewOf desk={desk} view={view} />
    </>
  );
}

function ViewOf({ desk, view }: { desk: ReturnType<typeof useWorkDesk>; view: string }) {
  const [here] = useLocation();
  switch (view) {
    case '':
      return <DrawingView desk={desk} />;
    case 'etch':
      return <EtchView desk={desk} />;
    case 'second-etch':
      return <SecondEtchView desk={desk} />;
    case 'days':
      return <DaysView work={desk.work} />;
    case 'edition':
      return <EditionsOfWork work={desk.work} />;
    case 'photographs':
      return <PhotographsView desk={desk} />;
    case 'about':
      return <AboutWork desk={desk} />;
    default:
      return <Redirect to={here.split('/').slice(0, 3).join('/')} replace />;
  }
}
