import type { Edition, LedgerState } from '../../../records/edition.ts';
import { goodPrintsWanted } from '../../../studio/editions/sheetCount.ts';
import { NoApproval } from './NoApproval.tsx';

/** What there is to know from across the room. */
export function PressNow({ edition, state }: { edition: Edition; state: LedgerState }) {
  const wanted = goodPrintsWanted(edition.size, edition.artistProofs);
  const left = wanted - state.good;
  return (
    <section className={state.gumNow ? 'press-now gum' : 'press-now'}>
      <p className="stamp">{edition.title}</p>
      <div aria-live="assertive">
        <h1 className="big">{headWords(state, left)}</h1>
      </div>
      <p className="press-count">
        <b className="big">{Math.max(0, left)}</b>
        <span>
          good ones left of {wanted}
          <br />
          <b>{state.good}</b> good · <b>{state.second}</b> second · <b>{state.torn}</b> torn
        </span>
      </p>
      <p className="press-charge">{chargeWords(state)}</p>
      <NoApproval workId={edition.workId} linked={false} />
    </section>
  );
}

function headWords(state: LedgerState, left: number): string {
  if (state.gumNow) return `Gum the stone: it has stood ${minutesOf(state.stillSeconds!)}`;
  if (state.pause) return state.pause.gummed ? 'Paused, under gum' : 'Paused: keep the stone damp';
  if (left <= 0) return 'All good ones are printed';
  return `Print ${state.impressions.length + 1}`;
}

function chargeWords({ lastCharge, stillSeconds }: LedgerState): string {
  const since = stillSeconds === null || stillSeconds < 120 ? '' : ` Nothing for ${minutesOf(stillSeconds)}.`;
  if (lastCharge === null) return `No charge of the slab logged yet.${since}`;
  const { impressionsSince: n } = lastCharge;
  return `Slab charged ${n === 0 ? 'just now' : n === 1 ? '1 print ago' : `${n} prints ago`}.${since}`;
}

function minutesOf(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  if (minutes < 1) return 'under a minute';
  if (minutes >= 2 * 24 * 60) return `${Math.floor(minutes / 60 / 24)} days`;
  if (minutes >= 120) return `${Math.floor(minutes / 60)} hours`;
  return minutes === 1 ? '1 minute' : `${minutes} minutes`;
}
