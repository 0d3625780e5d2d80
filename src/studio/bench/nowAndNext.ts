import type { Contact, DueMove, NowAndNext } from '../../records/bench.ts';
import type { EtchPlan, ScheduleStep } from '../../records/etch.ts';
import { laidRows } from '../etch/laidRows.ts';

/**
 * What to do now and next by the plan's schedule. Nobody must tap to keep it going: the clock runs from the first
 * touch, and the last tap that can be matched to the plan shifts what follows by how late it was.
 *
 * @param contacts those of the etch that the plan is for
 * @param startedMs when that etch was said to begin, ms; null: the plan's first touch is the first that was logged
 * @returns null without a schedule, or before anything was begun
 */
export function nowAndNext(
  plan: EtchPlan,
  contacts: readonly Contact[],
  startedMs: number | null,
  nowMs: number,
): NowAndNext | null {
  const { steps } = plan.schedule;
  if (steps.length === 0) return null;
  const letters = new Map(laidRows(plan).map(({ row }) => [row.id, row.letter]));
  const begun = startedMs ?? firstTouchMs(steps, contacts);
  if (begun === null) return null;
  const lateSeconds = Math.round(lateness(steps, contacts, begun));
  // a beginning told by another clock may seem to lie a moment ahead: what was begun has begun
  const elapsedSeconds = Math.max(0, (nowMs - begun) / 1000);
  const byPlan = elapsedSeconds - lateSeconds;
  const lifted = new Set(contacts.filter((one) => one.liftedAt !== null).map(({ place }) => place));
  const laid = new Set(contacts.map(({ place }) => place));
  const due = steps.filter(({ zone, action }) => !lifted.has(zone) && !(action === 'lay' && laid.has(zone)));
  const move = (step: ScheduleStep): DueMove => ({
    person: step.person,
    action: step.action,
    place: step.zone,
    letter: letters.get(step.zone) ?? null,
    inSeconds: Math.round(step.from - byPlan),
    lastsSeconds: step.to - step.from,
  });
  const people = [...new Set(steps.map(({ person }) => person))].sort((a, b) => a - b);
  const ofEach = (choose: (own: readonly ScheduleStep[]) => ScheduleStep | undefined) =>
    people.flatMap((person) => {
      const step = choose(due.filter((one) => one.person === person));
      return step ? [move(step)] : [];
    });
  return {
    elapsedSeconds,
    lateSeconds,
    now: ofEach((own) => own.find(({ from, to }) => from <= byPlan && byPlan < to)),
    next: ofEach((own) => own.find(({ from }) => from > byPlan)),
    wet: wetPlaces(steps, contacts, begun + lateSeconds * 1000, nowMs),
    done: steps.every(({ zone }) => lifted.has(zone)),
  };
}

/** Where the plan's own clock stood at 0, told from the first place that was laid; laying is logged at its end. */
function firstTouchMs(steps: readonly ScheduleStep[], contacts: readonly Contact[]): number | null {
  const first = contacts[0];
  if (!first) return null;
  const lay = steps.find(({ zone, action }) => zone === first.place && action === 'lay');
  return Date.parse(first.laidAt) - (lay?.to ?? 0) * 1000;
}

/** How much later than planned the last tap was that the plan knows, seconds; never early. */
function lateness(steps: readonly ScheduleStep[], contacts: readonly Contact[], begun: number): number {
  let latest = { ms: Number.NEGATIVE_INFINITY, late: 0 };
  for (const { place, laidAt, liftedAt } of contacts) {
    for (const [action, at] of [
      ['lay', laidAt],
      ['lift', liftedAt],
    ] as const) {
      const step = steps.find((one) => one.zone === place && one.action === action);
      if (!step || at === null) continue;
      const ms = Date.parse(at);
      if (ms > latest.ms) latest = { ms, late: (ms - begun) / 1000 - step.to };
    }
  }
  return Math.max(0, latest.late);
}

function wetPlaces(
  steps: readonly ScheduleStep[],
  contacts: readonly Contact[],
  planZeroMs: number,
  nowMs: number,
): NowAndNext['wet'] {
  return contacts
    .filter(({ liftedAt }) => liftedAt === null)
    .map(({ place, letter, laidAt, touchedAt, allowedGapSeconds }) => {
      // a move that the voice called and nobody tapped is taken as made
      const called = steps
        .filter((one) => one.zone === place && one.action === 'move')
        .map(({ to }) => planZeroMs + to * 1000)
        .filter((ms) => ms <= nowMs);
      const touched = Math.max(Date.parse(touchedAt), ...called);
      const dueInSeconds =
        allowedGapSeconds === null ? null : Math.round(allowedGapSeconds - (nowMs - touched) / 1000);
      return { place, letter, dueInSeconds, onSeconds: Math.round((nowMs - Date.parse(laidAt)) / 1000) };
    })
    .sort((a, b) => (a.dueInSeconds ?? Number.MAX_VALUE) - (b.dueInSeconds ?? Number.MAX_VALUE));
}
