import type { KnownHold, TableAdvice } from '../../../records/knownHolds.ts';

/** What the table says of a medium and its sources do, judged by what this room found. */
export function foundWords(medium: string, holds: readonly KnownHold[], advice: TableAdvice | null): string {
  if (advice === null) return `The etch table has no rule for ${medium}: test a patch first.`;
  const asked = holds.find(({ etch }) => sameEtch(etch, advice.row));
  const rule = asked ? ruleWords(asked) : 'What the table asks for was not tried with it here.';
  const sources =
    advice.sources.length > 1
      ? ` Sources disagree (${advice.sources.map(({ source, advice: says }) => `${source}: ${says}`).join('; ')}); ${
          sourcesSettled[asked?.verdict ?? 'open']
        }`
      : '';
  return `${rule}${sources}`;
}

const sourcesSettled: Readonly<Record<KnownHold['verdict'], string>> = {
  holds: 'in this room the table’s stands.',
  'holds-here': 'one stone is too few to say which is right here.',
  fails: 'in this room the table’s does not stand.',
  'fails-here': 'one stone is too few to say which is right here.',
  open: 'this room cannot say yet which is right.',
};

function ruleWords({ etch, verdict, share }: KnownHold): string {
  switch (verdict) {
    case 'holds':
      return `The table's ${etch} is borne out.`;
    case 'fails':
      return `The table's ${etch} is not borne out: change the row, or say why it stays.`;
    case 'holds-here':
    case 'fails-here':
      return `The table's ${etch} was tried on one stone only.`;
    case 'open':
      return `Whether the table's ${etch} holds is not sure yet: ${(100 * share.low).toFixed(0)}–${(100 * share.high).toFixed(0)} %, 19 times of 20.`;
    default:
      return verdict satisfies never;
  }
}

function sameEtch(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
