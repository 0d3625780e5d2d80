import type { Basis } from '../../foundation/measured.ts';
import type { Standing, StandingVerdict, WaitRange } from '../../records/bench.ts';
import type { GumState, RackLine, WaitBand } from '../../records/rack.ts';
import { momentText } from './localMoment.ts';

/** What a wait is, as one says it beside a stone. */
export const verdictWords: Readonly<Record<StandingVerdict, string>> = {
  now: 'now',
  'too-soon': 'too soon',
  open: 'may go on',
  best: 'best now',
  'past-best': 'past its best time',
  unknown: 'not known',
};

/** Where a number comes from, as one says it. */
export const basisWords: Readonly<Record<Basis, string>> = {
  published: 'published',
  'common practice': 'common practice, no source',
  memory: 'from memory, varies',
  'this room': 'this room’s own record',
  typed: 'typed',
  measured: 'measured',
};

/** Whether a stone lies under gum: foremost in every list. */
export function gumWords({ gummed, gumNow }: GumState): string {
  if (gumNow) return 'gum now';
  return { yes: 'gummed', no: 'not gummed', unknown: 'gummed or not: not known' }[gummed];
}

/** What the whole rack comes to, as a headline. */
export function rackFinding(lines: readonly RackLine[]): string {
  const named = (of: (standing: Standing) => boolean) => [
    ...new Set(lines.filter(({ standing }) => of(standing)).map(({ stoneName }) => stoneName)),
  ];
  const gum = named(({ gumNow }) => gumNow);
  if (gum.length > 0) return `Gum ${listed(gum)} now`;
  const wet = named((standing) => standing.wet);
  if (wet.length > 0) return `Etch lies on ${listed(wet)}`;
  const past = named(({ verdict }) => verdict === 'past-best');
  if (past.length > 0) return `${listed(past)} past the best time`;
  const best = named(({ verdict }) => verdict === 'best');
  if (best.length > 0) return `Best done now: ${listed(best)}`;
  const unknown = named(({ gummed, inked }) => gummed === 'unknown' && inked === 'yes');
  if (unknown.length > 0) return `See whether ${listed(unknown)} ${unknown.length > 1 ? 'are' : 'is'} gummed`;
  return 'Nothing presses, as far as is known';
}

function listed(names: readonly string[]): string {
  const shown = names.slice(0, 3);
  const more = names.length - shown.length;
  if (more > 0) return `${shown.join(', ')} and ${more} more`;
  return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}

/** Until when it is best done, or since when it waits without such an end. */
export function bestByWords({ bestBy, range, verdict, wet }: Standing, now: Date): string {
  if (verdict === 'now') return wet ? 'etch lies on the stone and does not wait' : 'it is under way';
  if (bestBy !== null) {
    const until = range?.bestTo === null ? 'in time' : 'best';
    return Date.parse(bestBy) < now.getTime()
      ? `was ${until} until ${momentText(bestBy)}`
      : `${until} until ${momentText(bestBy)}`;
  }
  if (range === null) return 'no time is known that would close it';
  return verdict === 'unknown' ? 'how long it waits is not known' : 'no latest time is known';
}

/** Since when a stone stands so, and how long that is. */
export function sinceWords(since: string | null, now: Date): string {
  if (since === null) return 'since when: not known';
  return `since ${momentText(since)}, ${durationWords((now.getTime() - Date.parse(since)) / 1000)}`;
}

/** A length of time in one rounded unit or two: `40 s`, `12 min`, `8 h`, `3 days`. */
export function durationWords(seconds: number): string {
  const whole = Math.max(0, seconds);
  if (whole < 90) return `${Math.round(whole)} s`;
  if (whole < 90 * 60) return `${Math.round(whole / 60)} min`;
  if (whole < 72 * 3600) return `${Math.round(whole / 3600)} h`;
  return `${Math.round(whole / 86_400)} days`;
}

/** What practice says of a wait, one sentence a bound. */
export function rangeWords({ openFrom, bestFrom, bestTo, pastFrom, unknownFrom }: WaitRange): string[] {
  const words: string[] = [];
  if (openFrom > 0) words.push(`too soon before ${durationWords(openFrom)}`);
  if (bestFrom !== null && bestTo !== null) {
    words.push(
      bestFrom === 0
        ? `best within ${durationWords(bestTo)}`
        : `best from ${durationWords(bestFrom)} to ${durationWords(bestTo)}`,
    );
  }
  if (pastFrom !== null) words.push(`past the best from ${durationWords(pastFrom)} on`);
  if (unknownFrom !== null) words.push(`beyond ${durationWords(unknownFrom)} not known`);
  if (pastFrom === null && unknownFrom === null) words.push('no longest time is known');
  return words;
}

/** How long the stones of a band were left. */
export function bandSpan({ shortestSeconds, longestSeconds }: WaitBand): string {
  const [short, long] = [durationWords(shortestSeconds), durationWords(longestSeconds)];
  return short === long ? short : `${short} to ${long}`;
}

/** What became of the zones of stones that were left so long; unknown under three. */
export function bandWords({ share, waits, zones, held, undecided }: WaitBand): string {
  const percent = (one: number) => Math.round(one * 100);
  const open = undecided > 0 ? `, ${undecided} more undecided` : '';
  const count = `${held} of ${zones} ${zones === 1 ? 'zone' : 'zones'} held on ${waits} ${waits === 1 ? 'stone' : 'stones'}${open}`;
  if (share === null) return `unknown: ${count}; three stones are needed`;
  return `${percent(share.value)} % held (95 %: ${percent(share.low)} to ${percent(share.high)} %): ${count}`;
}
