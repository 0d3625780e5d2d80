export interface TryLimits {
  /** How many tries one source has within the window. */
  readonly each: number;
  /** How many all sources have together. */
  readonly all: number;
  readonly windowMs: number;
  readonly now: () => number;
}

/** Counts tries within a window that moves on; holds no more than `all` of them. */
export interface TryCounter {
  /** How long this source must wait before its next try, ms; 0: it may try. */
  waitMs(source: string): number;
  count(source: string): void;
}

/** @param each tries of one source within the window, `all` of all together. */
export function createTryCounter({ each, all, windowMs, now }: TryLimits): TryCounter {
  let tries: readonly { readonly source: string; readonly at: number }[] = [];
  const inWindow = () => {
    const since = now() - windowMs;
    tries = tries.filter(({ at }) => at > since);
    return tries;
  };
  /** When the oldest of the last `allowed` tries leaves the window; 0 where there are fewer. */
  const fullUntil = (counted: typeof tries, allowed: number) =>
    counted.length < allowed ? 0 : counted.at(-allowed)!.at + windowMs;
  return {
    waitMs(source) {
      const counted = inWindow();
      const own = counted.filter((tried) => tried.source === source);
      return Math.max(0, Math.max(fullUntil(own, each), fullUntil(counted, all)) - now());
    },
    count(source) {
      tries = [...inWindow(), { source, at: now() }];
    },
  };
}
