import type { Contact, RunFact, Spent } from '../../records/bench.ts';
import type { LineStage, RunEvent } from '../../records/run.ts';
import { minutesSeconds } from '../etch/clockWords.ts';
import { type ContactRule, contactRules, type EtchesPlanned } from '../etch/contactRules.ts';
import { laidRows } from '../etch/laidRows.ts';
import type { Moment } from './eventMoments.ts';
import { isoOf, type PlacedEvent } from './placedEvents.ts';
import { measuredSpent, rememberedSpent } from './spent.ts';
import { etches, type StageTold } from './stagesDone.ts';

/** A gap this much too long is what a tap can't tell, seconds: our rule. */
const tapSeconds = 2;

interface OpenContact {
  readonly place: string;
  readonly stage: LineStage;
  readonly laid: Moment;
  touched: Moment;
  lifted: Moment | null;
  remembered: Spent | null;
  /** Whether its end was forgotten and told afterwards: then its taps do not measure it. */
  endForgotten: boolean;
  /** The longest time untouched that was logged, seconds, and where it ended. */
  longestGap: number;
  moves: number;
}

/** Contacts as they went, with what was not as the plan allows. */
export interface Contacts {
  readonly contacts: readonly Contact[];
  readonly buffedRounds: number;
  readonly facts: readonly RunFact[];
}

/**
 * Every etch on every place, from laid to lifted, beside the rule that it went by. Laid or lifted a second time by
 * somebody else, it is one step. Gaps are known only of a run in which moves were logged.
 */
export function contactsOf(
  placed: readonly PlacedEvent[],
  stages: readonly StageTold[],
  planned: EtchesPlanned,
): Contacts {
  const plan = planned.first;
  // a later etch shares the first one's letters and names, not its times
  const rows = new Map((plan ? laidRows(plan) : []).map((one) => [one.row.id, one]));
  const ruleOf = ({ place, stage }: Pick<OpenContact, 'place' | 'stage'>, ms: number) =>
    contactRules(planned, stage, ms).find(({ id }) => id === place);
  const all: OpenContact[] = [];
  const last = new Map<string, OpenContact>();
  const facts: RunFact[] = [];
  let buffedRounds = 0;
  const etchBegan = stages.findLast(({ stage }) => etches.includes(stage))?.started?.ms ?? 0;
  const tell = (fact: RunFact['fact'], { sequence }: RunEvent, words: string) =>
    facts.push({ fact, sequence, words });
  const latest = contactRules(
    planned,
    stages.findLast(({ stage }) => etches.includes(stage))?.stage ?? 'first-etch',
    Number.POSITIVE_INFINITY,
  );
  const nameOf = (place: string) =>
    rows.get(place)?.name ?? latest.find(({ id }) => id === place)?.name ?? place;

  const touch = (contact: OpenContact, event: RunEvent, moment: Moment) => {
    const gap = (moment.ms - contact.touched.ms) / 1000;
    contact.touched = moment;
    contact.longestGap = Math.max(contact.longestGap, gap);
    const allowed = ruleOf(contact, moment.ms)?.gapSeconds ?? null;
    if (allowed === null || gap <= allowed + tapSeconds) return;
    if (event.kind === 'lifted' && contact.moves === 0) return;
    const words = `${nameOf(contact.place)}: no move logged for ${minutesSeconds(gap)}, ${minutesSeconds(allowed)} allowed`;
    tell('gap-too-long', event, words);
  };

  for (const { event, moment } of placed) {
    switch (event.kind) {
      case 'laid': {
        const { place } = event.payload;
        const open = last.get(place);
        if (open && open.lifted === null) {
          tell('logged-twice', event, `${nameOf(place)} was laid already; the first counts`);
          break;
        }
        if (plan && !rows.has(place)) tell('not-in-plan', event, `${place} is not in the plan`);
        const contact = {
          place,
          stage: etchAt(stages, moment),
          laid: moment,
          touched: moment,
          lifted: null,
          remembered: null,
          endForgotten: false,
          longestGap: 0,
          moves: 0,
        };
        all.push(contact);
        last.set(place, contact);
        break;
      }
      case 'moved': {
        const open = last.get(event.payload.place);
        if (open?.lifted === null) {
          open.moves++;
          touch(open, event, moment);
        } else tell('not-laid', event, `${nameOf(event.payload.place)} was moved, but no etch lay there`);
        break;
      }
      case 'lifted': {
        const { place } = event.payload;
        const open = last.get(place);
        if (open?.lifted === null) {
          touch(open, event, moment);
          open.lifted = moment;
          const short = contactFact(open, ruleOf(open, moment.ms));
          if (short) tell(short.fact, event, short.words);
        } else if (open) tell('logged-twice', event, `${nameOf(place)} was lifted already; the first counts`);
        else tell('not-laid', event, `${nameOf(place)} was lifted, but nobody logged it laid`);
        break;
      }
      case 'buffed':
        // the rounds of an earlier etch are not those of this one
        if (moment.ms < etchBegan) break;
        buffedRounds = Math.max(buffedRounds, event.payload.round ?? 1);
        break;
      case 'trouble': {
        const { place, words } = event.payload;
        tell('trouble', event, place ? `${nameOf(place)}: ${words}` : words);
        break;
      }
      case 'remembered': {
        const { place, seconds } = event.payload;
        if (!place) break;
        const remembered = rememberedSpent(seconds);
        const contact = last.get(place);
        if (contact) {
          contact.remembered = remembered;
          contact.endForgotten ||= contact.lifted === null;
          contact.lifted ??= moment;
        } else {
          const forgotten = forgottenContact(place, etchAt(stages, moment), moment, remembered);
          all.push(forgotten);
          last.set(place, forgotten);
        }
        break;
      }
      default:
    }
  }
  const movesLogged = all.some(({ moves }) => moves > 0);
  return {
    contacts: all.map((contact) => {
      const rule = ruleOf(contact, contact.lifted?.ms ?? Number.POSITIVE_INFINITY);
      return shown(contact, {
        rule,
        name: nameOf(contact.place),
        row: rows.get(contact.place)?.row,
        movesLogged,
      });
    }),
    buffedRounds,
    facts,
  };
}

/** A contact of which no tap was logged: where it began follows from what is remembered. */
function forgottenContact(place: string, stage: LineStage, moment: Moment, remembered: Spent): OpenContact {
  const laid = { ...moment, ms: moment.ms - remembered.seconds * 1000 };
  return {
    place,
    stage,
    laid,
    touched: moment,
    lifted: moment,
    remembered,
    endForgotten: true,
    longestGap: 0,
    moves: 0,
  };
}

function etchAt(stages: readonly StageTold[], { ms }: Moment): LineStage {
  const etch = stages.findLast(
    ({ stage, started }) => etches.includes(stage) && started !== null && started.ms <= ms,
  );
  return etch?.stage ?? 'first-etch';
}

function contactFact(
  contact: OpenContact,
  rule: ContactRule | undefined,
): Pick<RunFact, 'fact' | 'words'> | null {
  const allowed = rule?.contactSeconds;
  if (!allowed || contact.lifted === null) return null;
  const { low, high, seconds } = measuredSpent(contact.laid, contact.lifted);
  const lay = `${rule.name} lay ${minutesSeconds(seconds)}`;
  if (high < allowed.low) {
    return { fact: 'contact-short', words: `Too soon: ${lay}, ${minutesSeconds(allowed.low)} at least` };
  }
  if (allowed.high !== null && low > allowed.high) {
    return { fact: 'contact-long', words: `Too late: ${lay}, ${minutesSeconds(allowed.high)} at most` };
  }
  return null;
}

function shown(
  contact: OpenContact,
  given: {
    readonly rule: ContactRule | undefined;
    readonly name: string;
    /** The place in the plan of the first etch. */
    readonly row: ReturnType<typeof laidRows>[number]['row'] | undefined;
    readonly movesLogged: boolean;
  },
): Contact {
  const { rule, row, movesLogged } = given;
  const measured = contact.lifted && !contact.endForgotten;
  const spent = measured ? measuredSpent(contact.laid, contact.lifted!) : contact.remembered;
  const byClock = contact.stage === 'first-etch' && row?.layTo != null && row.endsAt !== null;
  const plannedSeconds = byClock ? row.endsAt - row.layTo! : (rule?.contactSeconds?.wanted ?? null);
  return {
    place: contact.place,
    letter: row?.letter ?? rule?.letter ?? null,
    name: given.name,
    stage: contact.stage,
    laidAt: isoOf(contact.laid),
    touchedAt: isoOf(contact.touched),
    liftedAt: contact.lifted && isoOf(contact.lifted),
    spent,
    plannedSeconds,
    differenceSeconds: spent && plannedSeconds !== null ? spent.seconds - plannedSeconds : null,
    longestGapSeconds: movesLogged ? contact.longestGap : null,
    allowedGapSeconds: rule?.gapSeconds ?? null,
  };
}
