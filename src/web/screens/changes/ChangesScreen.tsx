import './Changes.css';
import { useQuery } from '@tanstack/react-query';
import { Link, useLocation, useSearch } from 'wouter';
import { type ComparedSide, changesKey, readChanges } from '../../client/changes.ts';
import { openRun, runKey } from '../../client/runs.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { listWorks, worksKey } from '../../client/workList.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { ChangeTables } from './ChangeTables.tsx';
import { changesHeadline, otherDrawing } from './changeWords.ts';
import { LikelyEarlier } from './LikelyEarlier.tsx';
import { SidePicker } from './SidePicker.tsx';

/** So many works are offered, those that were changed last. */
const worksOffered = 200;

/** What changed between two works or runs: the later one in the address, the earlier one in its question. */
export default function ChangesScreen({ later }: { later: ComparedSide }) {
  const [, go] = useLocation();
  const earlier = sideOf(new URLSearchParams(useSearch()).get('since'));
  const works = useQuery({
    queryKey: [...worksKey, 'offered'],
    queryFn: async ({ signal }) =>
      (await listWorks({ search: '', putBy: 'all', stage: null }, null, signal, worksOffered)).works,
  });
  const changes = useQuery({
    queryKey: changesKey(later, earlier ?? later),
    queryFn: () => readChanges(later, earlier!),
    enabled: earlier !== null,
    // logs grow; what was compared a moment ago may be more by now
    staleTime: 0,
  });
  const workOf = { later: useWorkOf(later), earlier: useWorkOf(earlier) };
  const failed = works.error ?? changes.error;
  const compare = (next: ComparedSide, since: ComparedSide | null) =>
    go(addressOf(next, since), { replace: true });
  const alone = works.data?.length === 1 && later.kind === 'works';
  const same = earlier !== null && earlier.id === later.id;
  const differ =
    workOf.earlier !== null &&
    workOf.earlier !== workOf.later &&
    changes.data !== undefined &&
    otherDrawing(changes.data);
  return (
    <>
      <PageHead
        stamp={
          workOf.later ? <Link href={`/works/${workOf.later}`}>{say('To the work')}</Link> : say('Works')
        }
        headline={
          differ
            ? say('Two different drawings')
            : changes.data && !same
              ? changesHeadline(changes.data)
              : say('What changed?')
        }
      />
      {failed && (
        <div className="changes-body">
          <FailureNotice failure={shownFailure(failed)} />
        </div>
      )}
      {alone ? (
        <EmptyPage
          title={say('There is nothing to compare with yet')}
          act={
            <ButtonLink kind="act" href="/works/new">
              {say('Enter another work')}
            </ButtonLink>
          }
        >
          <p>
            {say(
              'Two works or two runs are laid side by side here: one that printed well and one that did not, say. This is the only work so far. Enter the next one, or an older one halfway with what is known of it.',
            )}
          </p>
        </EmptyPage>
      ) : (
        works.data && (
          <div className="changes-body">
            {earlier === null && (
              <>
                <p className="changes-purpose">
                  {say(
                    'One print worked and another did not: lay the two side by side, and all that was done differently is listed, what the trade would look at first on top.',
                  )}
                </p>
                {workOf.later && (
                  <div>
                    <LikelyEarlier
                      later={later}
                      workId={workOf.later}
                      works={works.data}
                      onPick={(side) => compare(later, side)}
                    />
                  </div>
                )}
                <p>
                  {say('Or pick another one. A work counts by its newest run at the bench, if it has one.')}
                </p>
              </>
            )}
            <div className="changes-sides">
              <SidePicker
                label={say('Earlier, such as the one that worked')}
                side={earlier}
                workId={workOf.earlier}
                works={works.data}
                onPick={(side) => compare(later, side)}
              />
              <SidePicker
                label={say('Later, such as the one that did not')}
                side={later}
                workId={workOf.later}
                works={works.data}
                onPick={(side) => compare(side, earlier)}
              />
            </div>
            {same && (
              <p>{say('Both sides are the same. Pick another work or another run on one of them.')}</p>
            )}
            {differ && (
              <p>
                {say(
                  'Two different drawings: compare runs of one work to see what was done otherwise. Between these two {changesHeadline}.',
                  { changesHeadline: changesHeadline(changes.data!) },
                )}
              </p>
            )}
            {changes.data && !same && <ChangeTables changes={changes.data} />}
          </div>
        )
      )}
    </>
  );
}

/** The work that a side is of; null while that is not known. */
function useWorkOf(side: ComparedSide | null): string | null {
  const run = useQuery({
    queryKey: [...runKey(side?.id ?? ''), 'compared'],
    queryFn: () => openRun(side!.id),
    enabled: side?.kind === 'runs',
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (side === null) return null;
  return side.kind === 'works' ? side.id : (run.data?.workId ?? null);
}

function sideOf(text: string | null): ComparedSide | null {
  const [kind, id] = text?.split('/') ?? [];
  return (kind === 'works' || kind === 'runs') && id ? { kind, id } : null;
}

function addressOf(later: ComparedSide, earlier: ComparedSide | null): string {
  const path = `/changes/${later.kind}/${later.id}`;
  return earlier === null ? path : `${path}?since=${earlier.kind}/${earlier.id}`;
}
