import type { Standing } from '../../records/bench.ts';
import type { RackLine } from '../../records/rack.ts';

/**
 * The rack with what can wait least first: gum now, etch on the stone, past best, best (soonest end first) and what is
 * under way, perhaps
 * ungummed, open (soonest end first), unknown, too soon. Our rule; equals by the stone's name.
 */
export function inRackOrder(lines: readonly RackLine[]): readonly RackLine[] {
  return lines.toSorted(
    (a, b) =>
      rankOf(a.standing) - rankOf(b.standing) ||
      endOf(a.standing) - endOf(b.standing) ||
      byName.compare(a.stoneName, b.stoneName) ||
      byTitle.compare(a.title, b.title),
  );
}

const byName = new Intl.Collator('en', { numeric: true });
const byTitle = new Intl.Collator('en');

function rankOf({ gumNow, wet, verdict, inked, gummed }: Standing): number {
  if (gumNow) return 0;
  if (wet) return 1;
  if (verdict === 'past-best') return 2;
  if (verdict === 'best') return 3;
  if (inked === 'yes' && gummed === 'unknown') return 4;
  switch (verdict) {
    case 'now':
      return 3;
    case 'open':
      return 5;
    case 'unknown':
      return 6;
    case 'too-soon':
      return 7;
    default:
      return verdict satisfies never;
  }
}

function endOf({ bestBy }: Standing): number {
  return bestBy === null ? Number.MAX_SAFE_INTEGER : Date.parse(bestBy);
}
