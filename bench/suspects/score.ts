import { type Random, seededRandom } from '../../src/foundation/random.ts';
import { type Cause, causes, type Features, type Suspect } from '../../src/records/suspects.ts';
import { namedFrom } from '../../src/studio/proofs/suspects/answerSuspects.ts';
import { judgeSuspects } from '../../src/studio/proofs/suspects/judgeSuspects.ts';
import { separatingTests } from '../../src/studio/proofs/suspects/separatingTests.ts';
import { expectedBits } from '../../src/studio/proofs/suspects/testValue.ts';

/** A simulated case as it is judged. */
export interface ScoredCase {
  readonly seed: number;
  readonly causes: readonly Cause[];
  readonly unknown: string | null;
  readonly features: Features;
}

export interface SuspectScores {
  readonly cases: number;
  /** Share of single causes that are among the first two. */
  readonly single: number;
  /** Of paired ones: at least one among the first two; both among the first three. */
  readonly pairedAny: number;
  readonly pairedBoth: number;
  /**
   * Of the cases with a cause, single or paired: the share in which it is named, its evidence at least "some"; in which it is
   * among the first two; and of those that hold it alone.
   */
  readonly recall: Readonly<
    Record<Cause, { named: number; firstTwo: number; single: number; count: number }>
  >;
  /** Suspects named in a case that don't hold there, on average. */
  readonly falselyNamed: number;
  /** Share of unknown faults on which "something else" leads; and on how many known ones it does. */
  readonly elseLeads: number;
  readonly elseFalse: number;
  /** Expected calibration error over ten equal bins, every suspect of every case. */
  readonly calibrationError: number;
  /** The same over suspects with a chance of a tenth or more only: the many that are next to nothing flatter the other. */
  readonly calibrationErrorNamed: number;
  readonly bins: readonly { readonly said: number; readonly held: number; readonly count: number }[];
}

export interface Judged {
  readonly order: readonly Suspect[];
  readonly chances: ReadonlyMap<Suspect, { chance: number; logOdds: number; weight: number }>;
}

/** The list as it stands for a case; with `tests`, after that many offered tests were done, best first. */
export function judgeCase(one: ScoredCase, tests = 0): Judged {
  const random = seededRandom(one.seed + 77);
  const outcomes: { test: string; outcome: string }[] = [];
  let weighed = judgeSuspects({ features: one.features, outcomes, room: null });
  for (let round = 0; round < tests; round++) {
    const open = separatingTests.filter(({ id }) => !outcomes.some(({ test }) => test === id));
    const value = (test: (typeof open)[0]) => expectedBits(test, weighed) / test.minutes;
    const best = open.toSorted((a, b) => value(b) - value(a))[0]!;
    outcomes.push({ test: best.id, outcome: drawnOutcome(best, one, random) });
    weighed = judgeSuspects({ features: one.features, outcomes, room: null });
  }
  const order = weighed.toSorted((a, b) => b.logOdds - a.logOdds || b.chance - a.chance);
  order.sort((a, b) => b.chance - a.chance || b.logOdds - a.logOdds);
  return {
    order: order.map(({ suspect }) => suspect),
    chances: new Map(
      weighed.map(({ suspect, chance, logOdds, start }) => [
        suspect,
        { chance, logOdds, weight: logOdds - start },
      ]),
    ),
  };
}

/** What a test would show: with the table's own chances, which nobody has measured. */
function drawnOutcome(test: (typeof separatingTests)[0], one: ScoredCase, random: Random): string {
  const chances = one.causes.map((cause) => test.chance[cause]).filter((chance) => chance !== undefined);
  return random() < (chances.length > 0 ? Math.max(...chances) : test.otherwise) ? 'yes' : 'no';
}

export function scoreCases(cases: readonly ScoredCase[], tests = 0): SuspectScores {
  const judged = cases.map((one) => ({ one, ...judgeCase(one, tests) }));
  const share = (of: readonly (typeof judged)[0][], is: (one: (typeof judged)[0]) => boolean) =>
    of.length === 0 ? Number.NaN : of.filter(is).length / of.length;
  const single = judged.filter(({ one }) => one.causes.length === 1);
  const paired = judged.filter(({ one }) => one.causes.length === 2);
  const unknown = judged.filter(({ one }) => one.unknown !== null);
  const among = (order: readonly Suspect[], cause: Cause, first: number) =>
    order.slice(0, first).includes(cause);
  const bins = Array.from({ length: 10 }, () => ({ said: 0, held: 0, count: 0 }));
  for (const { one, chances } of judged)
    for (const [suspect, { chance }] of chances) {
      const bin = bins[Math.min(9, Math.floor(chance * 10))]!;
      bin.said += chance;
      bin.held += holds(one, suspect) ? 1 : 0;
      bin.count++;
    }
  return {
    cases: cases.length,
    single: share(single, ({ one, order }) => among(order, one.causes[0]!, 2)),
    pairedAny: share(paired, ({ one, order }) => one.causes.some((cause) => among(order, cause, 2))),
    pairedBoth: share(paired, ({ one, order }) => one.causes.every((cause) => among(order, cause, 3))),
    recall: Object.fromEntries(
      causes.map((cause) => {
        const own = judged.filter(({ one }) => one.causes.includes(cause));
        const alone = own.filter(({ one }) => one.causes.length === 1);
        const first = ({ order }: (typeof judged)[0]) => among(order, cause, 2);
        const named = ({ chances }: (typeof judged)[0]) => chances.get(cause)!.weight >= namedFrom;
        return [
          cause,
          {
            named: share(own, named),
            firstTwo: share(own, first),
            single: share(alone, first),
            count: own.length,
          },
        ];
      }),
    ) as SuspectScores['recall'],
    falselyNamed: judged.reduce((sum, { one, chances }) => sum + falseNames(one, chances), 0) / judged.length,
    elseLeads: share(unknown, ({ order }) => order[0] === 'something-else'),
    elseFalse: share([...single, ...paired], ({ order }) => order[0] === 'something-else'),
    calibrationError: calibrationError(bins),
    calibrationErrorNamed: calibrationError(bins.slice(1)),
    bins: bins.map(({ said, held, count }) => ({ said: said / count, held: held / count, count })),
  };
}

function falseNames(one: ScoredCase, chances: Judged['chances']): number {
  return causes.filter((cause) => chances.get(cause)!.weight >= namedFrom && !one.causes.includes(cause))
    .length;
}

function calibrationError(bins: readonly { said: number; held: number; count: number }[]): number {
  const total = bins.reduce((sum, { count }) => sum + count, 0);
  return bins.reduce((sum, { said, held }) => sum + Math.abs(said - held), 0) / total;
}

/** Whether a suspect is the one: "something else" is where the fault is an unknown one. */
export function holds(one: ScoredCase, suspect: Suspect): boolean {
  return suspect === 'something-else' ? one.unknown !== null : one.causes.includes(suspect);
}
