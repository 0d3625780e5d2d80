import type { LineStage } from '../../records/run.ts';
import type { RoomTime } from '../../records/studio.ts';
import { lineStages } from '../../studio/bench/lineStages.ts';
import { say } from '../words/say.ts';
import type { Typed } from './typedMerge.ts';
import { numberTrouble, typedNumber } from './typedNumber.ts';

/** The longest that a stage may take its hands, minutes: that of the server. */
const mostMinutes = 30_000;

/** The stages that take hands, each by a name that no other has. */
export const handStages: readonly (readonly [LineStage, string])[] = lineStages
  .filter(({ waiting }) => !waiting)
  .map(({ stage, name }) => [stage, unlike(stage, name)]);

function unlike(stage: LineStage, name: string): string {
  const shared = lineStages.some((one) => one.stage !== stage && one.name === name);
  return shared && stage.startsWith('second-') ? say('{name}, second time', { name }) : name;
}

/** A stage's fields: which, how many minutes at least and at most, how many people. */
export function timeFields(index: number, time: RoomTime | null): Typed {
  const t = `time${index}`;
  return {
    [`${t}.stage`]: time?.stage ?? '',
    [`${t}.low`]: time ? `${time.lowMinutes}` : '',
    [`${t}.high`]: time ? `${time.highMinutes}` : '',
    [`${t}.people`]: `${time?.people ?? 1}`,
  };
}

/** How many stages the form has lines for. */
export function timesTyped(typed: Typed): number {
  return Object.keys(typed).filter((field) => /^time\d+\.stage$/.test(field)).length;
}

function rows(typed: Typed): readonly string[] {
  return Array.from({ length: timesTyped(typed) }, (_, index) => `time${index}`).filter(
    (t) => typed[`${t}.stage`] !== '',
  );
}

/** What is wrong, by field; a line without a stage is none. */
export function timeTroubles(typed: Typed): Readonly<Record<string, string | null>> {
  const troubles: Record<string, string | null> = {};
  const named = new Set<string>();
  for (const t of rows(typed)) {
    const [stage, low, high] = [typed[`${t}.stage`]!, typed[`${t}.low`]!, typed[`${t}.high`]!];
    const asked = { needed: true, whole: true };
    troubles[`${t}.stage`] = named.has(stage) ? say('This stage has a line above.') : null;
    troubles[`${t}.low`] = numberTrouble(low, 1, mostMinutes, asked);
    troubles[`${t}.high`] =
      numberTrouble(high, 1, mostMinutes, asked) ??
      (typedNumber(high)! < typedNumber(low)! ? say('At most is less than at least.') : null);
    named.add(stage);
  }
  return troubles;
}

/** The times that were typed, where nothing is wrong with them. */
export function timesOf(typed: Typed): readonly RoomTime[] {
  return rows(typed).map((t) => ({
    stage: typed[`${t}.stage`] as LineStage,
    lowMinutes: typedNumber(typed[`${t}.low`]!)!,
    highMinutes: typedNumber(typed[`${t}.high`]!)!,
    people: typed[`${t}.people`] === '2' ? 2 : 1,
  }));
}
