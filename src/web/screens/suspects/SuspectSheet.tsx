import { told } from '../../words/told.ts';
import './Suspects.css';
import { useMutation } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import {
  type JudgedSuspect,
  pictureFeatures,
  type Reason,
  type SuspectsAnswer,
} from '../../../records/suspects.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';
import type { KeepOutcome } from './SeparatingTests.tsx';

/** So many of the things that a picture can show may be unread: a single print lacks a few. Our rule. */
const mostUnread = 12;

/** The words of a reason, leading to the picture that shows it where there is one. */
type ShowReason = (reason: Reason) => ReactNode;

/** Every suspect with what speaks for and against it: those that are spoken for, and the rest folded away. */
export function SuspectSheet({
  answer,
  held,
  keep,
  show,
}: {
  answer: SuspectsAnswer;
  /** What was held against what, in a sentence or none. */
  held: string;
  keep: KeepOutcome;
  show: ShowReason;
}) {
  const spoken = answer.suspects.filter(({ evidence }) => evidence === 'strong' || evidence === 'some');
  const rest = answer.suspects.filter(
    (one) => !spoken.includes(one) && one.supporting.length + one.opposing.length > 0,
  );
  const found = answer.suspects.find(({ suspect }) => suspect === answer.found);
  const items = (list: readonly JudgedSuspect[]) => (
    <ul className="suspects">
      {list.map((one) => (
        <SuspectItem
          key={one.suspect}
          one={one}
          found={answer.found === one.suspect}
          keep={keep}
          show={show}
        />
      ))}
    </ul>
  );
  return (
    <section aria-label={say('Suspects')} className="suspect-sheet">
      <p className="soft">
        {say(
          'Several may hold at once, and none of them is a verdict. {held} Weights are common practice; {room}.',
          { held, room: roomWords(answer.roomCases) },
        )}
      </p>
      {found && (
        <p>
          {say('Noted as what it was: {name}. “It was this” at another puts that in its place.', {
            name: told(found.name),
          })}
        </p>
      )}
      {spoken.length === 0 && (
        <p>
          {littleRead(answer)
            ? say('Too little could be read to name a suspect.')
            : say('Nothing that is seen speaks for a fault.')}
        </p>
      )}
      {items(spoken)}
      {rest.length > 0 && (
        <Fold
          title={say(
            '{count, plural, one {One other, for which nothing or little speaks} other {{count} others, for which nothing or little speaks}}',
            { count: rest.length },
          )}
        >
          {items(rest)}
        </Fold>
      )}
    </section>
  );
}

/** Whether most of what a picture can show was never read: then nothing seen is not the same as nothing there. */
export function littleRead({ seen, unknown }: SuspectsAnswer): boolean {
  return seen.length === 0 && pictureFeatures.filter((one) => unknown.includes(one)).length > mostUnread;
}

function roomWords(cases: number): string {
  if (cases === 0) return say('no fault was traced to its cause here yet');
  return say(
    '{cases, plural, one {one fault that was traced to its cause here moved} other {{cases} faults that were traced to their causes here moved}} where each suspect starts',
    { cases },
  );
}

function SuspectItem({
  one,
  found,
  keep,
  show,
}: {
  one: JudgedSuspect;
  /** Whether somebody kept it as what it was. */
  found: boolean;
  keep: KeepOutcome;
  show: ShowReason;
}) {
  const keeping = useMutation({ mutationFn: () => keep({ found: one.suspect }) });
  return (
    <li>
      <h2>
        <em className={`suspect-word ${one.evidence}`}>{told(one.evidence)}</em> {told(one.name)}
      </h2>
      <Reasons title={say('For it')} reasons={one.supporting} show={show} />
      <Reasons title={say('Against it')} reasons={one.opposing} show={show} />
      {found ? (
        <p className="suspect-found">{say('Noted: it was this')}</p>
      ) : (
        <Button kind="quiet" disabled={keeping.isPending} onClick={() => keeping.mutate()}>
          {say('It was this')}
        </Button>
      )}
      {keeping.isError && <FailureNotice failure={shownFailure(keeping.error)} />}
    </li>
  );
}

function Reasons({ title, reasons, show }: { title: string; reasons: readonly Reason[]; show: ShowReason }) {
  if (reasons.length === 0) return null;
  return (
    <>
      <p className="soft">{title}:</p>
      <ul className="suspect-reasons">
        {reasons.map((reason) => (
          <li key={reason.what}>{show(reason)}</li>
        ))}
      </ul>
    </>
  );
}
