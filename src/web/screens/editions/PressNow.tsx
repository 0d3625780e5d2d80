import type { Edition } from '../../../records/edition.ts';
import type { LedgerState } from '../../../records/ledger.ts';
import type { EditionCount } from '../../../studio/editions/editionCount.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { goodWords, wantedWords } from './CountWords.tsx';
import { NoApproval } from './NoApproval.tsx';
import { useEditionCount } from './useEditionCount.ts';

/** What there is to know from across the room. */
export function PressNow({ edition, state }: { edition: Edition; state: LedgerState }) {
  const count = useEditionCount(edition, state);
  return (
    <section className={state.gumNow ? 'press-now gum' : 'press-now'}>
      <p className="stamp">{edition.title}</p>
      <div aria-live="assertive">
        <h1 className="big">{headWords(state, count)}</h1>
      </div>
      <p className="press-count">
        <b className="big">{count.more === 0 ? count.good : count.more}</b>
        <span>
          {goodWords(count)}
          <br />
          {sayRich('<b>{good}</b> good · <b>{second}</b> second · <b>{torn}</b> torn', {
            b: (words) => <b>{words}</b>,
            good: state.good,
            second: state.second,
            torn: state.torn,
          })}
        </span>
      </p>
      <p className="press-wanted">{wantedWords(count)}</p>
      <p className="press-charge">{chargeWords(state)}</p>
      {count.more === 0 && <p className="press-charge">{stoneWords(state)}</p>}
      <NoApproval workId={edition.workId} linked={false} />
    </section>
  );
}

function headWords(state: LedgerState, { more, wanted }: EditionCount): string {
  if (state.gumNow)
    return say('Gum the stone: it has stood {minutesOf}', { minutesOf: minutesOf(state.stillSeconds!) });
  if (more === 0) return say('All {wanted} are printed. Let them dry.', { wanted });
  if (state.pause) return state.pause.gummed ? say('Paused, under gum') : say('Paused: keep the stone damp');
  return say('Print {count}', { count: state.impressions.length + 1 });
}

function stoneWords({ pause }: LedgerState): string {
  return pause?.gummed
    ? say('The stone is under gum.')
    : say('The stone is not gummed: gum it before you leave it.');
}

function chargeWords({ lastCharge, stillSeconds }: LedgerState): string {
  const since =
    stillSeconds === null || stillSeconds < 120
      ? ''
      : say(' Nothing for {minutesOf}.', { minutesOf: minutesOf(stillSeconds) });
  if (lastCharge === null) return say('No charge of the slab logged yet.{since}', { since });
  const { impressionsSince: n } = lastCharge;
  return n === 0
    ? say('Slab charged just now.{since}', { since })
    : say('Slab charged {n, plural, one {1 print ago} other {{n} prints ago}}.{since}', { n, since });
}

function minutesOf(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  if (minutes < 1) return say('under a minute');
  if (minutes >= 2 * 24 * 60) return say('{minutes} days', { minutes: Math.floor(minutes / 60 / 24) });
  if (minutes >= 120) return say('{minutes} hours', { minutes: Math.floor(minutes / 60) });
  return say('{minutes, plural, one {1 minute} other {{minutes} minutes}}', { minutes });
}
