import type { Task } from './task.ts';

/**
 * Parts an etch in two: the ground with all weaker etches, then the strongest by itself.
 * @returns null where there is but one strength beside the ground, so that there is nothing to part
 */
export function inTwoStages(tasks: readonly Task[]): readonly [readonly Task[], readonly Task[]] | null {
  const strongest = Math.max(...tasks.map((task) => task.strengthRank));
  const strong = tasks.filter((task) => task.strengthRank === strongest);
  const before = tasks.filter((task) => task.strengthRank < strongest);
  return before.some((task) => task.strengthRank > 0) ? [before, strong] : null;
}
