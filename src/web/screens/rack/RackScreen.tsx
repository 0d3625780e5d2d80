import './RackScreen.css';
import { useState } from 'react';
import { Link } from 'wouter';
import { shownFailure } from '../../client/shownFailure.ts';
import { rackFinding } from '../../managers/standingWords.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { CopiesNotice } from '../../parts/CopiesNotice.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { Reminders } from './Reminders.tsx';
import { StandingLine } from './StandingLine.tsx';
import { UnsentRuns } from './UnsentRuns.tsx';
import { useRack } from './useRack.ts';

/** So many lines at once: those that can wait least. */
const shownAtOnce = 40;

/** How every stone with a work on it stands, what can wait least first. */
export function RackScreen() {
  const rack = useRack();
  const [shown, setShown] = useState(shownAtOnce);
  const lines = rack.data?.lines ?? [];
  const now = new Date(rack.dataUpdatedAt);
  const empty = rack.isSuccess && lines.length === 0;
  const pressing = lines.find(({ standing, runId }) => standing.gumNow && runId !== null);
  return (
    <>
      <PageHead
        stamp={say('The rack')}
        headline={lines.length > 0 ? rackFinding(lines) : say('How the stones stand')}
      >
        {pressing && (
          <ButtonLink kind="act" href={`/bench/${pressing.runId}`}>
            {say('Go to the bench of {stoneName}', { stoneName: pressing.stoneName })}
          </ButtonLink>
        )}
        {lines.length > 0 && (
          <ButtonLink kind={pressing ? 'plain' : 'act'} href="/leaving">
            {say('Leaving now')}
          </ButtonLink>
        )}
      </PageHead>
      {rack.error && (
        <div className="list-foot">
          <FailureNotice failure={shownFailure(rack.error)} />
        </div>
      )}
      <CopiesNotice />
      <UnsentRuns />
      {empty && <EmptyRack />}
      {lines.length > 0 && (
        <ul className="rack-lines" aria-label={say('Stones, what can wait least first')}>
          {lines.slice(0, shown).map((line) => (
            <StandingLine key={line.workId} line={line} now={now} />
          ))}
        </ul>
      )}
      {lines.length > shown && (
        <div className="list-foot">
          <Button onClick={() => setShown(shown + shownAtOnce)}>
            {say('Show more of the {count} that can wait longer', { count: lines.length - shown })}
          </Button>
        </div>
      )}
      {rack.data && <Reminders reminders={rack.data.reminders} />}
      {lines.length > 0 && (
        <div className="list-foot soft">
          <p>
            {sayRich(
              'What nobody logged is not known, and is never taken for safe. Stones without a work stand under <link>Stones</link>.',
              { link: (words) => <Link href="/stones">{words}</Link> },
            )}
          </p>
        </div>
      )}
    </>
  );
}

/** What to do first. */
function EmptyRack() {
  return (
    <EmptyPage
      stone
      title={say('No work waits on any stone')}
      act={
        <ButtonLink kind="act" href="/works/new">
          {say('Start a work')}
        </ButtonLink>
      }
    >
      <p>
        {sayRich(
          'First <link>enter a stone</link>, then start a work on it. Here it says whether the stone is gummed, what comes next, and what is at risk meanwhile.',
          { link: (words) => <Link href="/stones/new">{words}</Link> },
        )}
      </p>
      <p>
        {sayRich(
          'Or look first at what an invented studio printed from its stone: <link>the sample under Comparisons</link>.',
          { link: (words) => <Link href="/comparisons">{words}</Link> },
        )}
      </p>
    </EmptyPage>
  );
}
