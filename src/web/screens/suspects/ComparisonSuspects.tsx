import { Told } from '../../parts/Told.tsx';
import { told } from '../../words/told.ts';
import '../Result.css';
import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { Link, useLocation, useSearch } from 'wouter';
import type { ComparisonEntry } from '../../../records/comparisonEntry.ts';
import type { KeptOutcome, Reason } from '../../../records/suspects.ts';
import { openComparison, startMeasuring } from '../../client/comparisons.ts';
import { entryKey } from '../../client/events.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import {
  comparisonSuspectsKey,
  type JudgedBeside,
  keepComparisonOutcome,
  readComparisonSuspects,
} from '../../client/suspects.ts';
import { mapKinds } from '../../look/mapInk.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { LiftPicture } from '../../parts/LiftPicture.tsx';
import { MapLegend, type ShownMarks } from '../../parts/MapLegend.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { JudgedBesideFields } from './JudgedBesideFields.tsx';
import { SeekingSuspects } from './SeekingSuspects.tsx';
import { EarlierTests, SeparatingTests } from './SeparatingTests.tsx';
import { littleRead, SuspectSheet } from './SuspectSheet.tsx';

/** So many tests are offered at once. */
const offered = 2;

const nothingMarked: ShownMarks = { lost: false, filled: false, scum: false, zones: false };
const allMarked: ShownMarks = { lost: true, filled: true, scum: true, zones: false };

/** What may have caused what a comparison shows, beside the picture that shows it. */
export function ComparisonSuspects({ entry }: { entry: ComparisonEntry }) {
  const [, go] = useLocation();
  const given = new URLSearchParams(useSearch());
  const beside: JudgedBeside = { earlier: given.get('earlier') ?? '', run: given.get('run') ?? '' };
  const setBeside = (next: JudgedBeside) => {
    const query = new URLSearchParams(Object.entries(next).filter(([, value]) => value !== ''));
    go(`/comparisons/${entry.id}/suspects${query.size > 0 ? `?${query}` : ''}`, { replace: true });
  };
  const queries = useQueryClient();
  const key = comparisonSuspectsKey(entry.id, beside);
  const suspects = useQuery({
    queryKey: key,
    queryFn: ({ signal }) => readComparisonSuspects(entry.id, beside, signal),
    placeholderData: keepPreviousData,
  });
  const earlier = useQuery({
    queryKey: entryKey(beside.earlier),
    queryFn: () => openComparison(beside.earlier),
    enabled: beside.earlier !== '',
  }).data;
  // Of two pulls the earlier one's picture is judged, with what changed from it to the later.
  const pictured = beside.earlier !== '' && earlier ? earlier : entry;
  const [marks, setMarks] = useState(allMarked);
  const [pointed, setPointed] = useState<string | null>(null);
  const picture = useRef<HTMLDivElement>(null);
  const show = (reason: Reason) => {
    const { see, words, what } = reason;
    if (see === null || see === 'log') return told(words);
    return (
      <button
        type="button"
        className="reason-shown"
        aria-pressed={pointed === what}
        onClick={() => {
          setPointed(what);
          setMarks(marksOf(see));
          if (picture.current && picture.current.getBoundingClientRect().top < -80)
            picture.current.scrollIntoView({ block: 'start' });
        }}
      >
        {told(words)}
      </button>
    );
  };
  const keep = async (outcome: KeptOutcome) =>
    queries.setQueryData(key, await keepComparisonOutcome(entry.id, beside, outcome));
  const answer = suspects.data;
  return (
    <div
      className="result"
      style={{ '--aspect': pictured.request.sizeMm[0] / pictured.request.sizeMm[1] } as React.CSSProperties}
    >
      <div className="result-head">
        <PageHead
          stamp={sayRich('<link>{title}</link> · Suspects', {
            link: (words) => <Link href={`/comparisons/${entry.id}`}>{words}</Link>,
            title: entry.title,
          })}
          headline={say('What may have caused it')}
        />
      </div>
      <div className="result-table">
        <div className="result-picture" ref={picture}>
          <LiftPicture
            key={pictured.id}
            id={pictured.id}
            sizeMm={pictured.request.sizeMm}
            zones={pictured.request.zones}
            partial={pictured.files.includes('sheet.png')}
            shown={marks}
            picked={null}
            onPick={() => {}}
          />
        </div>
        <div className="result-legend">
          <MapLegend
            shown={marks}
            zoned={pictured.request.zones.length > 0}
            onShown={(mark, shown) => setMarks((now) => ({ ...now, [mark]: shown }))}
          />
        </div>
      </div>
      <div className="result-sheet comparison-suspects">
        {suspects.isError && <FailureNotice failure={shownFailure(suspects.error)} />}
        {(!answer || suspects.isPlaceholderData) && !suspects.isError && (
          <SeekingSuspects queryKey={key} suspects={suspects} />
        )}
        {answer && (
          <>
            <section aria-labelledby="tests-head" className="suspect-tests">
              <h2 id="tests-head">{say('Tests, first what tells most in a minute')}</h2>
              <p>{told(answer.photograph.question)}</p>
              {answer.tests.length === 0 && <p>{say('No test that is left would tell more.')}</p>}
              <SeparatingTests answer={answer} most={offered} keep={keep} />
              <EarlierTests done={answer.done} keep={keep} />
            </section>
            <SuspectSheet
              answer={answer}
              held={
                pictured === entry
                  ? ''
                  : say('Judged by the picture of {title}, and by what changed from it to {title2}.', {
                      title: pictured.title,
                      title2: entry.title,
                    })
              }
              keep={keep}
              show={show}
            />
            {littleRead(answer) && <MeasureAgain id={entry.id} />}
            {answer.warnings.length > 0 && (
              <ul className="proof-warnings">
                {answer.warnings.map((words) => (
                  <li key={words} className="minded">
                    <Told>{words}</Told>
                  </li>
                ))}
              </ul>
            )}
          </>
        )}
        <Fold title={say('Judge it beside an earlier pull, or a run’s log')}>
          <JudgedBesideFields entry={entry} beside={beside} onBeside={setBeside} />
        </Fold>
        <ButtonLink href={`/comparisons/${entry.id}`}>{say('Back to what was measured')}</ButtonLink>
      </div>
    </div>
  );
}

/** Which marks a reason is seen by: its own map, all of them, or the print without any. */
function marksOf(see: string): ShownMarks {
  const kind = mapKinds.find((one) => `${one}.png` === see);
  if (kind) return { ...nothingMarked, [kind]: true };
  return see === 'overlay.png' ? allMarked : nothingMarked;
}

/** A comparison that an earlier engine measured left nothing to look for faults in. */
function MeasureAgain({ id }: { id: string }) {
  const queries = useQueryClient();
  const again = useMutation({
    mutationFn: () => startMeasuring(id),
    onSuccess: () => queries.invalidateQueries({ queryKey: entryKey(id) }),
  });
  return (
    <>
      <Button disabled={again.isPending} onClick={() => again.mutate()}>
        {say('Measure it again')}
      </Button>
      {again.isError && <FailureNotice failure={shownFailure(again.error)} />}
    </>
  );
}
