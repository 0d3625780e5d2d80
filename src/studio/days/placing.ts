import type { Presence } from './presence.ts';
import { inBoth, type Span } from './spans.ts';

/** What a step needs. */
export interface Need {
  readonly people: 1 | 2;
  readonly lengthMs: number;
  readonly mayBreak: boolean;
}

/** Where a step lies, and whose hands it has; the same from its start to its end. */
export interface Placed {
  readonly who: readonly string[];
  readonly spans: readonly Span[];
  readonly start: number;
  readonly end: number;
}

/** A step that is broken off is taken up again only where there is so much time, ms. Our rule. */
const leastPieceMs = 30 * 60_000;

/** Those who may do a step: each alone, or each two. */
function crews(
  people: readonly Presence[],
  size: 1 | 2,
): readonly { who: string[]; spans: readonly Span[] }[] {
  if (size === 1) return people.map(({ initials, spans }) => ({ who: [initials], spans }));
  return people.flatMap((one, index) =>
    people.slice(index + 1).map((other) => ({
      who: [one.initials, other.initials],
      spans: inBoth(one.spans, other.spans),
    })),
  );
}

/**
 * Where a step starts as late as it can so that it has ended by a moment; null where nobody has so much time.
 * Of several who could, the first.
 */
export function latestPlace(people: readonly Presence[], need: Need, endBy: number): Placed | null {
  let best: Placed | null = null;
  for (const { who, spans } of crews(people, need.people)) {
    const pieces = need.mayBreak
      ? brokenBack(spans, need.lengthMs, endBy)
      : wholeBack(spans, need.lengthMs, endBy);
    if (pieces && (best === null || pieces[0]!.from > best.start)) best = placed(who, pieces);
  }
  return best;
}

/** Where a step ends as early as it can, begun at a moment or later; null where nobody has so much time. */
export function earliestPlace(people: readonly Presence[], need: Need, from: number): Placed | null {
  let best: Placed | null = null;
  for (const { who, spans } of crews(people, need.people)) {
    const pieces = need.mayBreak ? brokenOn(spans, need.lengthMs, from) : wholeOn(spans, need.lengthMs, from);
    if (pieces && (best === null || pieces.at(-1)!.to < best.end)) best = placed(who, pieces);
  }
  return best;
}

/** The longest that so many are together without a break, ms. */
export function longestTogether(people: readonly Presence[], size: 1 | 2): number {
  return Math.max(0, ...crews(people, size).flatMap(({ spans }) => spans.map(({ from, to }) => to - from)));
}

function placed(who: readonly string[], spans: readonly Span[]): Placed {
  return { who, spans, start: spans[0]!.from, end: spans.at(-1)!.to };
}

function wholeBack(spans: readonly Span[], lengthMs: number, endBy: number): readonly Span[] | null {
  const span = spans.findLast(({ from, to }) => Math.min(to, endBy) - from >= lengthMs);
  if (!span) return null;
  const to = Math.min(span.to, endBy);
  return [{ from: to - lengthMs, to }];
}

function wholeOn(spans: readonly Span[], lengthMs: number, begin: number): readonly Span[] | null {
  const span = spans.find(({ from, to }) => to - Math.max(from, begin) >= lengthMs);
  if (!span) return null;
  const from = Math.max(span.from, begin);
  return [{ from, to: from + lengthMs }];
}

function brokenBack(spans: readonly Span[], lengthMs: number, endBy: number): readonly Span[] | null {
  const pieces: Span[] = [];
  let left = lengthMs;
  for (const span of worthwhile(spans, lengthMs).toReversed()) {
    const to = Math.min(span.to, endBy);
    if (to <= span.from) continue;
    const from = Math.max(span.from, to - left);
    pieces.unshift({ from, to });
    left -= to - from;
    if (left === 0) return pieces;
  }
  return null;
}

function brokenOn(spans: readonly Span[], lengthMs: number, begin: number): readonly Span[] | null {
  const pieces: Span[] = [];
  let left = lengthMs;
  for (const span of worthwhile(spans, lengthMs)) {
    const from = Math.max(span.from, begin);
    if (from >= span.to) continue;
    const to = Math.min(span.to, from + left);
    pieces.push({ from, to });
    left -= to - from;
    if (left === 0) return pieces;
  }
  return null;
}

function worthwhile(spans: readonly Span[], lengthMs: number): readonly Span[] {
  return spans.filter(({ from, to }) => to - from >= Math.min(leastPieceMs, lengthMs));
}
