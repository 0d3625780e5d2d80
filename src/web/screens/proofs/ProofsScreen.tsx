import './Proofs.css';
import './Standard.css';
import { useQuery } from '@tanstack/react-query';
import { lastHeard } from '../../client/heardOrHeld.ts';
import { openPull, pullKey } from '../../client/pulls.ts';
import { FailedRequest, shownFailure } from '../../client/shownFailure.ts';
import { openWork, workKey } from '../../client/works.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { NotFound } from '../NotFound.tsx';
import { AddPull } from './AddPull.tsx';
import { AddReading } from './AddReading.tsx';
import { ApprovalPage } from './ApprovalPage.tsx';
import { AreasPage } from './AreasPage.tsx';
import { ProofDesk } from './ProofDesk.tsx';
import { PullAnswer } from './PullAnswer.tsx';
import { PullMarks } from './PullMarks.tsx';
import { PullPage } from './PullPage.tsx';
import { SeriesSettingsPage } from './SeriesSettingsPage.tsx';
import { SuspectsPage } from './SuspectsPage.tsx';
import { UnsentPull } from './UnsentPull.tsx';
import { type ProofsPageParts, useProofs } from './useProofs.ts';
import { useUnsentPulls } from './useUnsentPulls.ts';

/** The proofs of a work: the desk, or what `page` names: a new pull, the areas, good to print, or a pull by its id. */
export default function ProofsScreen({ id, page, part }: { id: string; page: string; part: string }) {
  const work = useQuery({
    queryKey: workKey(id),
    queryFn: (asking) => lastHeard(asking, `work ${id}`, () => openWork(id)),
  });
  const proofs = useProofs(id);
  const { unsent, looking } = useUnsentPulls(id);
  const waits = unsent.find(({ pull }) => pull.typed.id === page);
  if (waits && !proofs.data?.pulls.some((one) => one.id === page))
    return <UnsentPull key={page} shown={waits} kept={proofs.data?.pulls ?? []} />;
  const failed = (work.data ? null : work.error) ?? proofs.error;
  if (failed) {
    const trouble = shownFailure(failed);
    if (failed instanceof FailedRequest && trouble.code === 'not-found') return <NotFound />;
    return (
      <>
        <PageHead stamp={say('Proofs')} headline={say('The proofs could not be opened')} />
        <div className="proofs-body">
          <FailureNotice failure={trouble} />
          <ButtonLink href="/works">{say('To the works')}</ButtonLink>
        </div>
      </>
    );
  }
  // a pull begins with what the last one had, and that may wait here
  if (!work.data || !proofs.data || looking) return <p className="unseen">{say('Opening …')}</p>;
  const shared = { work: work.data, proofs: proofs.data };
  switch (page) {
    case '':
      return <ProofDesk {...shared} />;
    case 'new':
      return <AddPull {...shared} />;
    case 'settings':
      return <SeriesSettingsPage key={proofs.data.settings.version} {...shared} />;
    case 'areas':
      return <AreasPage {...shared} />;
    case 'suspects':
      return <SuspectsPage {...shared} />;
    case 'good':
      return <ApprovalPage {...shared} />;
    default: {
      const pull = proofs.data.pulls.find((one) => one.id === page);
      if (!pull && part === 'marks') return <ImpressionMarks {...shared} id={page} />;
      if (!pull) return <NotFound within={`/works/${id}/proofs`} />;
      if (part === 'again') return <AddReading {...shared} pull={pull} />;
      if (part === 'marks') return <PullMarks key={pull.id} {...shared} pull={pull} />;
      if (part === 'answer') return <PullAnswer {...shared} pull={pull} />;
      return <PullPage key={pull.id} {...shared} pull={pull} />;
    }
  }
}

/** Corners and chips of an impression, which is read as a pull is, but is none of the series. */
function ImpressionMarks({ id, ...shared }: ProofsPageParts & { id: string }) {
  const pull = useQuery({
    queryKey: pullKey(shared.work.id, id),
    queryFn: () => openPull(shared.work.id, id),
  });
  if (pull.isError) return <NotFound within={`/works/${shared.work.id}/proofs`} />;
  return pull.data ? (
    <PullMarks key={id} {...shared} pull={pull.data} />
  ) : (
    <p className="unseen">{say('Opening …')}</p>
  );
}
