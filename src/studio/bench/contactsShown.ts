import type { Contact } from '../../records/bench.ts';
import type { PlannedPart, PlannedZone } from '../../records/etch.ts';
import type { ContactRule } from '../etch/contactRules.ts';
import type { TouchedContact } from './contacts.ts';
import { isoOf } from './placedEvents.ts';
import type { RulesOfContacts } from './rulesOfContacts.ts';
import { measuredSpent } from './spent.ts';
import type { StageTold } from './stagesDone.ts';

/** Contacts as a run tells them. */
export function contactsShown(
  contacts: readonly TouchedContact[],
  stages: readonly StageTold[],
  { rows, ruleOf, namesIn }: RulesOfContacts,
): readonly Contact[] {
  const nameOf = namesIn(stages);
  const movesLogged = contacts.some(({ moves }) => moves > 0);
  return contacts.map((contact) => {
    const rule = ruleOf(contact, contact.lifted?.ms ?? Number.POSITIVE_INFINITY);
    const row = rows.get(contact.place)?.row;
    return shown(contact, { rule, name: nameOf(contact.place), row, movesLogged });
  });
}

function shown(
  contact: TouchedContact,
  given: {
    readonly rule: ContactRule | undefined;
    readonly name: string;
    /** The place in the plan of the first etch. */
    readonly row: PlannedZone | PlannedPart | undefined;
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
