import type { Basis } from '../../foundation/measured.ts';
import type { Standing, StandingVerdict, WaitRange } from '../../records/bench.ts';
import type { GumState, RackLine, WaitBand } from '../../records/rack.ts';
import { gumToSee } from '../../studio/bench/gumToSee.ts';
import { say } from '../words/say.ts';
import { datedMomentText } from './localMoment.ts';

/** What a wait is, as one says it beside a stone. */
export const verdictWords: Readonly<Record<StandingVerdict, string>> = {
  now: say('now'),
  'too-soon': say('too soon'),
  open: say('may go on'),
  best: say('best now'),
  'past-best': say('past its best time'),
  unknown: say('not known'),
};

/** Where a number comes from, as one says it. */
export const basisWords: Readonly<Record<Basis, string>> = {
  published: say('published'),
  'common practice': say('common practice, no source'),
  memory: say('from memory, varies'),
  'this room': say('this room’s own record'),
  typed: say('typed'),
  measured: say('measured'),
};

/** Whether a stone lies under gum: foremost in every list. */
export function gumWords({ gummed, gumNow }: GumState): string {
  if (gumNow) return say('gum now');
  return { yes: say('gummed'), no: say('not gummed'), unknown: say('gummed or not: not known') }[gummed];
}

/** What the whole rack comes to, as a headline. */
export function rackFinding(lines: readonly RackLine[]): string {
  const named = (of: (standing: Standing) => boolean) => [
    ...new Set(lines.filter(({ standing }) => of(standing)).map(({ stoneName }) => stoneName)),
  ];
  const gum = named(({ gumNow }) => gumNow);
  if (gum.length > 0) return say('Gum {listed} now', { listed: listed(gum) });
  const wet = named((standing) => standing.wet);
  if (wet.length > 0) return say('Etch lies on {listed}', { listed: listed(wet) });
  const past = named(({ verdict }) => verdict === 'past-best');
  if (past.length > 0) return say('{listed} past the best time', { listed: listed(past) });
  const best = named(({ verdict }) => verdict === 'best');
  if (best.length > 0) return say('Best done now: {listed}', { listed: listed(best) });
  const unknown = named(gumToSee);
  if (unknown.length > 0)
    return say('See whether {listed} {count, plural, one {is} other {are}} gummed', {
      listed: listed(unknown),
      count: unknown.length,
    });
  return say('Nothing presses, as far as is known');
}

function listed(names: readonly string[]): string {
  const shown = names.slice(0, 3);
  const more = names.length - shown.length;
  if (more > 0) return say('{shown} and {more} more', { shown: shown.join(', '), more });
  return shown.length < 2
    ? (shown[0] ?? '')
    : say('{shown} and {shown2}', { shown: shown.slice(0, -1).join(', '), shown2: shown.at(-1) });
}

/** Since when a stone stands so, and how long that is. */
export function sinceWords(since: string | null, now: Date): string {
  if (since === null) return say('since when: not known');
  return say('since {moment}, {duration}', {
    moment: datedMomentText(since, now),
    duration: durationWords((now.getTime() - Date.parse(since)) / 1000),
  });
}

/** A length of time in one rounded unit or two: `40 s`, `12 min`, `8 h`, `3 days`. */
export function durationWords(seconds: number): string {
  const whole = Math.max(0, seconds);
  if (whole < 90) return say('{whole} s', { whole: Math.round(whole) });
  if (whole < 90 * 60) return say('{whole} min', { whole: Math.round(whole / 60) });
  if (whole < 72 * 3600) return say('{whole} h', { whole: Math.round(whole / 3600) });
  return say('{whole} days', { whole: Math.round(whole / 86_400) });
}

/** What practice says of a wait, one sentence a bound. */
export function rangeWords({ openFrom, bestFrom, bestTo, pastFrom, unknownFrom }: WaitRange): string[] {
  const words: string[] = [];
  if (openFrom > 0) words.push(say('too soon before {duration}', { duration: durationWords(openFrom) }));
  if (bestFrom !== null && bestTo !== null) {
    words.push(
      bestFrom === 0
        ? say('best within {duration}', { duration: durationWords(bestTo) })
        : say('best from {duration} to {duration2}', {
            duration: durationWords(bestFrom),
            duration2: durationWords(bestTo),
          }),
    );
  }
  if (pastFrom !== null)
    words.push(say('past the best from {duration} on', { duration: durationWords(pastFrom) }));
  if (unknownFrom !== null)
    words.push(say('beyond {duration} not known', { duration: durationWords(unknownFrom) }));
  if (pastFrom === null && unknownFrom === null) words.push(say('no longest time is known'));
  return words;
}

/** How long the stones of a band were left. */
export function bandSpan({ shortestSeconds, longestSeconds }: WaitBand): string {
  const [short, long] = [durationWords(shortestSeconds), durationWords(longestSeconds)];
  return short === long ? short : say('{short} to {long}', { short, long });
}

/** What became of the zones of stones that were left so long; unknown under three. */
export function bandWords({ share, waits, zones, held, undecided }: WaitBand): string {
  const percent = (one: number) => Math.round(one * 100);
  const open = undecided > 0 ? say(', {undecided} more undecided', { undecided }) : '';
  const count = say(
    '{held} of {zones} {zones, plural, one {zone} other {zones}} held on {waits} {waits, plural, one {stone} other {stones}}{open}',
    { held, zones, waits, open },
  );
  if (share === null) return say('unknown: {count}; three stones are needed', { count });
  return say('{percent} % held ({percent2} to {percent3} %, 19 times of 20): {count}', {
    percent: percent(share.value),
    percent2: percent(share.low),
    percent3: percent(share.high),
    count,
  });
}
