import type { RunFact, Spent } from '../../records/bench.ts';
import type { LineStage, RunEvent } from '../../records/run.ts';
import { minutesSeconds } from '../etch/clockWords.ts';
import type { ContactRule } from '../etch/contactRules.ts';
import type { Moment } from './eventMoments.ts';
import type { PlacedEvent } from './placedEvents.ts';
import type { RulesOfContacts } from './rulesOfContacts.ts';
import { measuredSpent, rememberedSpent } from './spent.ts';
import { etches, lastEtch, type StageTold } from './stagesDone.ts';

/** A gap this much too long is what a tap can't tell, seconds: our rule. */
const tapSeconds = 2;

/** One etch on one place as the taps tell it; plain, so that it can be kept. */
export interface TouchedContact {
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

/** Contacts as far as a log was read, with what was not as the plan allows. */
export interface ContactsRead {
  readonly contacts: readonly TouchedContact[];
  readonly buffedRounds: number;
  readonly facts: readonly RunFact[];
}

const nothingTouched: ContactsRead = { contacts: [], buffedRounds: 0, facts: [] };

/**
 * Every etch on every place, from laid to lifted, beside the rule that it went by. Laid or lifted a second time by
 * somebody else, it is one step. Gaps are known only of a run in which moves were logged.
 * @param stages all that the log tells
 * @param before what was read until then, where `placed` goes on from there; it stays as it is
 */
export function contactsOf(
  placed: readonly PlacedEvent[],
  stages: readonly StageTold[],
  rules: RulesOfContacts,
  before: ContactsRead = nothingTouched,
): ContactsRead {
  const { planned, rows, ruleOf } = rules;
  const all = [...before.contacts];
  const last = new Map<string, TouchedContact>();
  for (const [place, index] of new Map(all.map((contact, at) => [contact.place, at] as const))) {
    const contact = { ...all[index]! };
    all[index] = contact;
    last.set(place, contact);
  }
  const facts = [...before.facts];
  let { buffedRounds } = before;
  const etchBegan = lastEtch(stages)?.started?.ms ?? 0;
  const tell = (fact: RunFact['fact'], { sequence }: RunEvent, words: string) =>
    facts.push({ fact, sequence, words });
  const nameOf = rules.namesIn(stages);

  const touch = (contact: TouchedContact, event: RunEvent, moment: Moment) => {
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
        if (planned && !rows.has(place)) tell('not-in-plan', event, `${place} is not in the plan`);
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
  return { contacts: all, buffedRounds, facts };
}

/** A contact of which no tap was logged: where it began follows from what is remembered. */
function forgottenContact(
  place: string,
  stage: LineStage,
  moment: Moment,
  remembered: Spent,
): TouchedContact {
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
  contact: TouchedContact,
  rule: ContactRule | undefined,
): Pick<RunFact, 'fact' | 'words'> | null {
  const allowed = rule?.contactSeconds;
  if (!allowed || contact.lifted === null) return null;
  const { low, high, seconds } = measuredSpent(contact.laid, contact.lifted);
  // whole seconds as the clock showed them
  const lay = `${rule.name} lay ${minutesSeconds(Math.floor(seconds))}`;
  if (high < allowed.low) {
    return { fact: 'contact-short', words: `Too soon: ${lay}, ${minutesSeconds(allowed.low)} at least` };
  }
  if (allowed.high !== null && low > allowed.high) {
    return { fact: 'contact-long', words: `Too late: ${lay}, ${minutesSeconds(allowed.high)} at most` };
  }
  return null;
}
