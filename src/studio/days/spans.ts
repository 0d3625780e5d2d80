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
  let left = [...spans];
  for (const { from, to } of taken) {
    left = left.flatMap((span) => {
      if (to <= span.from || from >= span.to) return [span];
      const parts = [
        { from: span.from, to: from },
        { from: to, to: span.to },
      ];
      return parts.filter((part) => part.from < part.to);
    });
  }
  return left;
}
