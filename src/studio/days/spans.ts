/** A stretch of time, ms since 1970; `to` is not in it. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What lies in both of two lists of spans, each in order and without overlap. */
export function inBoth(a: readonly Span[], b: readonly Span[]): readonly Span[] {
  const both: Span[] = [];
  for (let [i, j] = [0, 0]; i < a.length && j < b.length; ) {
    const from = Math.max(a[i]!.from, b[j]!.from);
    const to = Math.min(a[i]!.to, b[j]!.to);
    if (from < to) both.push({ from, to });
    if (a[i]!.to <= b[j]!.to) i += 1;
    else j += 1;
  }
  return both;
}

/** What of a list of spans, in order and without overlap, is left without others, in any order. */
export function without(spans: readonly Span[], taken: readonly Span[]): readonly Span[] {
  const gone = taken.toSorted((a, b) => a.from - b.from);
  const left: Span[] = [];
  let next = 0;
  for (const { from, to } of spans) {
    let start = from;
    // what ends before this one begins cuts nothing of those that follow
    while (next < gone.length && gone[next]!.to <= from) next += 1;
    for (let index = next; index < gone.length && gone[index]!.from < to; index++) {
      const cut = gone[index]!;
      if (start < cut.from) left.push({ from: start, to: cut.from });
      start = Math.max(start, cut.to);
    }
    if (start < to) left.push({ from: start, to });
  }
  return left;
}
