import './NewComparison.css';
import { type ReactNode, useEffect } from 'react';
import { Link, Redirect, Route, Switch, useLocation } from 'wouter';
import { openPhotograph } from '../client/photographs.ts';
import { FailedRequest } from '../client/shownFailure.ts';
import { type Draft, missingPart, withPhotograph } from '../managers/draft.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import { CornersStep } from './CornersStep.tsx';
import { UnsentPhotographs } from './held/UnsentPhotographs.tsx';
import { PhotographsStep } from './PhotographsStep.tsx';
import { SizeStep } from './SizeStep.tsx';
import { draftKeeper, useDraft } from './useDraft.ts';
import { useSentForDraft } from './usePhotographUpload.ts';

/** Setting up a comparison, one thing at a time; each step can be gone back to, and a reload loses nothing. */
export default function NewComparison() {
  const draft = useDraft();
  useForgottenPhotographs(draft);
  useSentForDraft();
  const ready = missingPart(draft) !== 'photographs';
  return (
    <>
      <StepWords ready={ready} />
      <div className="new-unsent">
        <UnsentPhotographs of={(belongs) => belongs.to === 'comparison'} />
      </div>
      <Switch>
        <Route path="/new">
          <PhotographsStep />
        </Route>
        <Route path="/new/stone">
          {ready ? <CornersStep key="stone" side="stone" /> : <Redirect to="/new" replace />}
        </Route>
        <Route path="/new/print">
          {ready ? <CornersStep key="proof" side="proof" /> : <Redirect to="/new" replace />}
        </Route>
        <Route path="/new/size">{ready ? <SizeStep /> : <Redirect to="/new" replace />}</Route>
        <Route>
          <Redirect to="/new" replace />
        </Route>
      </Switch>
    </>
  );
}

/** The way to a comparison in one sentence: where one is stands in bold, all that can be gone to is a link. */
function StepWords({ ready }: { ready: boolean }) {
  const [here] = useLocation();
  const to = (path: string) => (words: ReactNode) =>
    here === path ? (
      <b aria-current="step">{words}</b>
    ) : ready || path === '/new' ? (
      <Link href={path}>{words}</Link>
    ) : (
      words
    );
  return (
    <nav className="step-words" aria-label={say('The way to a comparison')}>
      <p>
        {sayRich(
          'First <photographs>both photographs</photographs>, then four marks <stone>on the stone</stone> and <print>on the print</print>, last <size>the size</size>.',
          {
            photographs: to('/new'),
            stone: to('/new/stone'),
            print: to('/new/print'),
            size: to('/new/size'),
          },
        )}
      </p>
    </nav>
  );
}

/** A draft kept in the browser may name photographs that the server no longer has: those are asked for again. */
function useForgottenPhotographs(draft: Draft): void {
  const held = [draft.stone.photograph?.id, draft.proof.photograph?.id].join(' ');
  useEffect(() => {
    for (const side of ['stone', 'proof'] as const) {
      const photograph = draftKeeper.current()[side].photograph;
      if (!photograph) continue;
      openPhotograph(photograph.id).catch((thrown) => {
        const gone = thrown instanceof FailedRequest && thrown.failure.code !== 'internal';
        if (gone && draftKeeper.current()[side].photograph?.id === photograph.id)
          draftKeeper.change((current) => withPhotograph(current, side, 'photograph', null));
      });
    }
    void held;
  }, [held]);
}
