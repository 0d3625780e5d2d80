import type { RunState } from '../../../records/bench.ts';
import type { EtchPlan, ScheduleStep } from '../../../records/etch.ts';

/** The one move that words, light, voice, knuckle, pedal and key are about. */
export interface AskedMove {
  readonly step: ScheduleStep;
  /**
   * `now`: by the clock; `held`: its time is over, the tap for it is still waited for; `unlogged`: its time is long
   * over and nobody logged it; `next`: nothing is due before it.
   */
  readonly when: 'now' | 'held' | 'unlogged' | 'next';
  /** Until its end while it is due or held, negative once that is over; until its beginning where it is next. */
  readonly seconds: number;
}

/** All that the schedule asks of one person at one moment. */
export interface AskedMoves {
  readonly asked: AskedMove | null;
  /** What comes after it, with the seconds until it begins. */
  readonly after: { readonly step: ScheduleStep; readonly seconds: number } | null;
  /** What the clock has gone past without a tap: one's own first, then the other's. */
  readonly behind: readonly ScheduleStep[];
  /** Steps of one's own that are still to come, the next one first. */
  readonly coming: readonly ScheduleStep[];
}

/**
 * How long the tap for a lay or a lift is waited for before the clock goes on, seconds, our rule: whoever logs leads
 * the clock, whoever doesn't is led by it. Of the first tap nobody knows yet.
 */
const waitsFor = { first: 4, whoLogs: 10, move: 1.5 } as const;

type Given = Pick<RunState, 'contacts' | 'moves' | 'at'>;

/** What the schedule asks of a person: from what was logged, then by the clock. */
export function askedMoves(
  plan: Pick<EtchPlan, 'schedule'>,
  { moves, contacts, at }: Given,
  person: number,
): AskedMoves {
  if (moves === null) return { asked: null, after: null, behind: [], coming: [] };
  const byPlan = moves.elapsedSeconds - moves.lateSeconds;
  const zeroMs = Date.parse(at) - byPlan * 1000;
  const { steps } = plan.schedule;
  const last = new Map(contacts.map((contact) => [contact.place, contact]));
  const pending = (step: ScheduleStep): boolean => {
    const contact = last.get(step.zone);
    if (contact === undefined) return true;
    if (contact.liftedAt !== null || step.action === 'lay') return false;
    if (step.action === 'lift') return true;
    // a tap counts for the call that it lies nearest to
    const before = steps.findLast((one) => one.zone === step.zone && one.from < step.from)?.to ?? step.from;
    return Date.parse(contact.touchedAt) < zeroMs + ((before + step.from) / 2) * 1000;
  };
  const own = steps.filter((step) => step.person === person);
  const touches = own.filter(({ action }) => action !== 'move');
  const movesLogged = contacts.some(({ longestGapSeconds }) => longestGapSeconds !== null);
  const waited = (step: ScheduleStep): number => {
    if (step.action === 'move') return movesLogged ? waitsFor.move : 0;
    const earlier = touches.slice(0, touches.indexOf(step));
    if (earlier.length === 0) return waitsFor.first;
    return earlier.some(pending) ? 0 : waitsFor.whoLogs;
  };
  const open = own.filter(pending);
  const laid = (step: ScheduleStep) => step.action === 'lay' || last.has(step.zone);
  const past = (one: ScheduleStep) => one.action !== 'move' && one.to <= byPlan && pending(one);
  // what was logged laid comes first: of the rest nobody knows
  const behind = [own, steps.filter((step) => step.person !== person)].flatMap((some) =>
    some.filter(past).toSorted((a, b) => Number(laid(b)) - Number(laid(a))),
  );
  const coming = open.filter(({ from }) => from > byPlan);
  const held = open.find((step) => step.to <= byPlan && byPlan < step.to + waited(step));
  const now = open.find(({ from, to }) => from <= byPlan && byPlan < to);
  const unlogged = behind.find((step) => step.person === person) ?? (coming[0] ? undefined : behind[0]);
  const ending = (step: ScheduleStep, when: AskedMove['when']): AskedMove => ({
    step,
    when,
    seconds: Math.round(step.to - byPlan),
  });
  const until = (step: ScheduleStep) => Math.round(step.from - byPlan);
  const asked = held
    ? ending(held, 'held')
    : now
      ? ending(now, 'now')
      : unlogged
        ? ending(unlogged, 'unlogged')
        : coming[0]
          ? ({ step: coming[0], when: 'next', seconds: until(coming[0]) } as const)
          : null;
  const then = held && now ? now : coming.find((step) => step !== asked?.step);
  const after = then ? { step: then, seconds: Math.max(0, until(then)) } : null;
  return { asked, after: asked?.when === 'next' ? null : after, behind, coming };
}
