import { liftRank, type Task, type TouchTimes } from './task.ts';

/** How many states the exhaustive look at laying may visit before it gives up without an answer. */
const mostStates = 30_000;

/**
 * Looks for a proof that the areas can't be kept in one stage, whatever the order.
 * Each proof rests on what every schedule must do, so an answer here is certain; no answer proves nothing.
 * @returns the reason in one sentence, or null.
 */
export function provenImpossible(tasks: readonly Task[], people: number, touch: TouchTimes): string | null {
  return (
    tooMuchMoving(tasks, people, touch) ??
    (people === 1 ? (boundedTooLong(tasks, touch) ?? layingImpossible(tasks, touch)) : null)
  );
}

/**
 * Whichever zone is laid last, it and all that are lifted after it lie wet for its shortest contact.
 * If even the fewest touches they need in that time are more than the hands can give, it can't be done.
 */
function tooMuchMoving(tasks: readonly Task[], people: number, touch: TouchTimes): string | null {
  const possible = tasks.some((last) => {
    const wet = tasks.filter((task) => task === last || liftRank(task) > liftRank(last));
    const fewest = wet.reduce(
      (sum, task) =>
        sum + Math.floor(last.lowSeconds / (task.gapSeconds + touch.moveSeconds)) * touch.moveSeconds,
      0,
    );
    return fewest <= people * last.lowSeconds;
  });
  return possible || tasks.length === 0 ? null : 'keeping all of it moving takes more hands than there are';
}

/**
 * Of the zones with a longest contact, the first to be laid waits through the laying of the others
 * and through the lifting of all that are weaker.
 */
function boundedTooLong(tasks: readonly Task[], touch: TouchTimes): string | null {
  const bounded = tasks.filter((task) => task.highSeconds !== null);
  if (bounded.length === 0) return null;
  const layAll = bounded.reduce((sum, task) => sum + task.laySeconds, 0);
  const possible = bounded.some((first) => {
    const weaker = tasks.filter((task) => liftRank(task) < liftRank(first)).length;
    return layAll - first.laySeconds + (weaker + 1) * touch.liftSeconds <= first.highSeconds!;
  });
  return possible ? null : 'laying the strong etches takes longer than the first of them may stay';
}

/**
 * Tries every order of laying and moving for one person. Idling while something is still to be laid never helps
 * (all that follows may be shifted earlier), so a search without it is complete.
 */
function layingImpossible(tasks: readonly Task[], touch: TouchTimes): string | null {
  const count = tasks.length;
  const seen = new Set<string>();
  const stack: number[][] = [tasks.map(() => -1)];
  while (stack.length > 0) {
    if (seen.size > mostStates) return null;
    const ages = stack.pop()!;
    if (ages.every((age) => age >= 0)) return null;
    for (let index = 0; index < count; index++) {
      const seconds = ages[index]! < 0 ? tasks[index]!.laySeconds : touch.moveSeconds;
      const next = ages.map((age, other) => (other === index ? 0 : age < 0 ? -1 : age + seconds));
      if (!canStillBeMoved(next, tasks, touch)) continue;
      const key = next.join();
      if (seen.has(key)) continue;
      seen.add(key);
      stack.push(next);
    }
  }
  return 'while one large zone is laid, another dries: one person cannot lay them all in one stage';
}

/** Whether one person, starting now, reaches every wet zone in time once: earliest deadline first is best for equal touches. */
function canStillBeMoved(ages: readonly number[], tasks: readonly Task[], touch: TouchTimes): boolean {
  const left = ages
    .flatMap((age, index) => (age < 0 ? [] : [tasks[index]!.gapSeconds - age]))
    .toSorted((a, b) => a - b);
  return left.every((seconds, position) => seconds >= position * touch.moveSeconds);
}
