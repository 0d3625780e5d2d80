import { normalDraw, type Random, seededRandom } from '../../../foundation/random.ts';
import type { Hold, PatchFinding } from '../../../records/patchReading.ts';
import type { TestFactor } from '../../../records/testStone.ts';
import type { TestStoneFindings } from '../../../records/testStoneAnswer.ts';
import { squareName } from '../places/patchName.ts';

export const etchAndMedium: readonly TestFactor[] = [
  { name: 'etch', givenTo: 'strip' },
  { name: 'medium', givenTo: 'patch' },
];

/** A patch of 20 mm at a row and column, read as told. */
export function foundPatch(
  at: { readonly row: number; readonly column: number; readonly strip: string | null },
  treatment: Readonly<Record<string, string>>,
  read: { readonly hold: Hold | null; readonly printed: number | null; readonly drawn?: number | null },
): PatchFinding {
  const [x, y] = [15 + 30 * at.column, 25 + 40 * at.row];
  const patch = squareName(at.row + 1, at.column + 1);
  const exactly = (coverage: number | null | undefined) =>
    coverage === null || coverage === undefined
      ? null
      : { coverage, low: coverage - 0.01, high: coverage + 0.01 };
  return {
    patch,
    square: patch,
    strip: at.strip,
    row: at.row + 1,
    column: at.column + 1,
    intention: 'image',
    treatment,
    polygonMm: [
      [x, y],
      [x + 20, y],
      [x + 20, y + 20],
      [x, y + 20],
    ],
    camera: {
      drawn: exactly(read.drawn ?? 0.5),
      printed: exactly(read.printed),
      kept: null,
      hold: read.hold,
      least: read.hold,
      most: read.hold,
      mark: null,
      why: null,
    },
    corrections: [],
    hold: read.hold,
    holdBy: read.hold === null ? null : 'camera',
  };
}

/** A patch of a row: what it was drawn with, what became of it, and the coverage that it printed with. */
type FoundInRow = readonly [medium: string, hold: Hold | null, printed: number | null];

/**
 * A stone made by hand before any design: every medium once, a row of gum above a row of tannic, and below them a guide
 * line that vanished.
 */
export function foundByHand(
  gum: readonly FoundInRow[],
  tannic: readonly FoundInRow[],
  guide: string,
): readonly PatchFinding[] {
  const rowOf = (etch: string, row: number, patches: readonly FoundInRow[]) =>
    patches.map(([medium, hold, printed], column) =>
      foundPatch({ row, column, strip: `${row + 1}` }, { etch, medium }, { hold, printed }),
    );
  const vanished = foundPatch(
    { row: 2, column: 0, strip: '2' },
    { etch: 'tannic', medium: guide },
    { hold: null, printed: 0 },
  );
  return [...rowOf('gum', 0, gum), ...rowOf('tannic', 1, tannic), { ...vanished, intention: 'guide' }];
}

export interface InventedTrial {
  readonly seed: number;
  readonly stones: number;
  readonly etches: readonly string[];
  readonly media: readonly string[];
  /** Patches of one medium in a strip. */
  readonly repeats: number;
  /** Log odds that a patch holds. */
  readonly holds: (etch: string, medium: string) => number;
  /** How much log odds differ between stones and between strips. */
  readonly scatter: number;
  /** Change of coverage. */
  readonly tone: (etch: string, medium: string) => number;
}

/** A trial of known truth: strips and places drawn by lot on every stone. */
export function inventedTrial(trial: InventedTrial): TestStoneFindings[] {
  const random = seededRandom(trial.seed);
  return Array.from({ length: trial.stones }, (_, stone) => {
    const ofStone = { odds: trial.scatter * 0.7 * normalDraw(random), tone: 0.03 * normalDraw(random) };
    const findings = shuffled(trial.etches, random).flatMap((etch, row) => {
      const ofStrip = { odds: trial.scatter * 0.714 * normalDraw(random), tone: 0.03 * normalDraw(random) };
      const media = shuffled(
        trial.media.flatMap((medium) => Array.from({ length: trial.repeats }, () => medium)),
        random,
      );
      return media.map((medium, column) => {
        const odds = trial.holds(etch, medium) + ofStone.odds + ofStrip.odds;
        const held = random() < 1 / (1 + Math.exp(-odds));
        const weak = random() < 0.5;
        const printed =
          0.5 + trial.tone(etch, medium) + ofStone.tone + ofStrip.tone + 0.02 * normalDraw(random);
        return foundPatch(
          { row, column, strip: `${row + 1}` },
          { etch, medium },
          { hold: held ? 'held' : weak ? 'weak' : 'lost', printed },
        );
      });
    });
    return { stone: `T-${stone + 1}`, sizeMm: [400, 500], factors: etchAndMedium, findings, prints: 1 };
  });
}

/** The same in another order, told by the seed of `random`. */
export function shuffled<Item>(items: readonly Item[], random: Random): Item[] {
  const drawn = [...items];
  for (let last = drawn.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [drawn[last], drawn[other]] = [drawn[other]!, drawn[last]!];
  }
  return drawn;
}
