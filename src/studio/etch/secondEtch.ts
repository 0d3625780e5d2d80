import type { EtchTable } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import type {
  SecondEtchLine,
  SecondEtchPlan,
  SecondEtchStep,
  SecondEtchZone,
} from '../../records/secondEtch.ts';

const practice = 'common practice, no source';
const order: readonly EtchStrength[] = ['ground', 'scant', 'light', 'middle', 'dark'];

/**
 * Plans the second etch from how each zone rolled up and printed, not from the drawing.
 * A zone whose lights were lost is never etched stronger: a second etch can't bring them back. One whose first etch is
 * unknown gets gum only.
 * @param table the studio's table; a zone whose strength has no row there gets gum only where the table has it.
 */
export function secondEtchPlan(
  zones: readonly SecondEtchZone[],
  line: SecondEtchLine,
  table: EtchTable,
): SecondEtchPlan {
  return {
    line,
    zones: zones.map((zone) => {
      const { strength, why } = secondStrength(zone);
      const row = table.rows.find((candidate) => candidate.strength === strength);
      return { id: zone.id, name: zone.name, strength: row ? strength : null, etch: row?.name ?? null, why };
    }),
    steps:
      line === 'full'
        ? [...preparation, ...etching, ...fullRest]
        : [...preparation, ...etching, ...quickRest],
    cautions: [
      'A second etch keeps what printed; it cannot bring back lost lights.',
      'Rosin can make lungs and skin oversensitive, and its dust burns: dust it gently, away from flames.',
      ...(line === 'quick'
        ? ['A quick etch is said to be good for 20–40 pulls: log what this room gets.']
        : []),
    ],
  };
}

function secondStrength({ first, reading }: SecondEtchZone): { strength: EtchStrength; why: string } {
  switch (reading) {
    case 'lights lost':
      return { strength: 'ground', why: 'lights are lost: gum only, so that no more goes' };
    case 'not read':
      return { strength: 'ground', why: 'not read on roll-up or proof: gum only until it is' };
    case 'as drawn':
    case 'closing':
    case 'scum':
      return first === null ? unknownFirst : keptOrStronger(first, reading);
    default:
      return reading satisfies never;
  }
}

const unknownFirst = {
  strength: 'ground',
  why: 'how it was etched first is not known here: gum only, and test a patch before anything stronger',
} as const;

function keptOrStronger(first: EtchStrength, reading: 'as drawn' | 'closing' | 'scum') {
  switch (reading) {
    case 'as drawn':
      return { strength: first, why: 'came up as drawn: the same strength again, to keep it' };
    case 'scum':
      return { strength: first, why: 'scummed: clean first, then the same strength; gum to the edges' };
    case 'closing': {
      const stronger = order[order.indexOf(first) + 1];
      return stronger
        ? { strength: stronger, why: 'closing: one step stronger, to hold the whites open' }
        : { strength: first, why: 'closing, and etched with the strongest already: the same again' };
    }
    default:
      return reading satisfies never;
  }
}

const preparation: readonly SecondEtchStep[] = [
  { what: 'Roll up full and fan dry', endSign: 'no shine of water left', basis: practice },
  {
    what: 'Dust with rosin, then talc; dust off',
    endSign: 'nothing comes off on a clean brush',
    basis: practice,
  },
];

const etching: readonly SecondEtchStep[] = [
  {
    what: 'Lay the etch by zones, weak before strong',
    endSign: 'every zone wet and moving',
    basis: practice,
  },
  { what: 'Buff tight, light to dark, fresh cloths', endSign: 'cloth stops dragging', basis: practice },
];

const fullRest: readonly SecondEtchStep[] = [
  { what: 'Rest 12–24 hours, gummed', endSign: 'the next day', basis: practice },
  { what: 'Wash out through the dry gum', endSign: 'ghost only', basis: practice },
  { what: 'Rub base about 50 s, buff, 5 min of air', endSign: 'no shine left', basis: practice },
  { what: 'Water takes off the gum; roll up', endSign: 'the drawing stands full', basis: practice },
];

const quickRest: readonly SecondEtchStep[] = [
  { what: 'Leave about 5 minutes', endSign: 'gum dry to the touch', basis: practice },
  { what: 'Water takes off the gum; roll on', endSign: 'the drawing takes ink', basis: practice },
];
