import type { StageRule } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import type { CourseLine, CourseStage, TestCourse } from '../../../records/testCourse.ts';
import type { TreatmentKind } from '../../../records/testPlan.ts';
import type { StonePatch, TestStone } from '../../../records/testStone.ts';
import { patchNames } from '../places/patchName.ts';

/** The line of a test stone: common practice, no source. It is read from its proofs. */
const line: readonly LineStage[] = [
  'draw',
  'powder',
  'first-etch',
  'first-rest',
  'washout',
  'base',
  'base-air',
  'water',
  'roll-up',
  'proofs',
];

const stageOfKind: Readonly<Partial<Record<TreatmentKind, LineStage>>> = {
  medium: 'draw',
  deposit: 'draw',
  powder: 'powder',
  etch: 'first-etch',
  contact: 'first-etch',
  rest: 'first-rest',
  washout: 'washout',
  'roll-up': 'roll-up',
};

/**
 * Every stage of a test stone in order, with who gets what in it: for whoever etches all but the drawing, for whoever draws the
 * drawing alone, so that nobody reads more of the list than their hands need.
 * @param rules the stages as the line has them
 */
export function testCourse(
  stone: Pick<TestStone, 'id' | 'name' | 'patches'>,
  kinds: Readonly<Record<string, TreatmentKind>>,
  rules: readonly StageRule[],
  hands: TestCourse['for'],
): Omit<TestCourse, 'plan'> {
  const told = (kind: TreatmentKind) => (stageOfKind[kind] === 'draw') === (hands === 'draw');
  const stages = line
    .filter((stage) => hands === 'etch' || stage === 'draw')
    .map((stage): CourseStage => {
      const { name, expected, endSign } = rules.find((rule) => rule.stage === stage)!;
      const factors = Object.keys(kinds).filter((each) => stageOfKind[kinds[each]!] === stage);
      const shown = factors.filter((each) => told(kinds[each]!));
      return { stage, name, expected, endSign, lines: linesOf(stone.patches, shown) };
    });
  const elsewhere = Object.keys(kinds)
    .filter((name) => stageOfKind[kinds[name]!] === undefined && hands === 'etch')
    .flatMap((treatment) => linesOf(stone.patches, [treatment]).map((each) => ({ ...each, treatment })));
  return {
    schema: 'stonetone/test-course/1',
    testStone: stone.id,
    name: stone.name,
    for: hands,
    stages,
    elsewhere,
  };
}

/** Each combination of levels with the strips and patches that get it, in the order in which they lie. */
function linesOf(patches: readonly StonePatch[], factors: readonly string[]): CourseLine[] {
  if (factors.length === 0) return [];
  const words = ({ treatment }: StonePatch) =>
    factors.map((factor) => treatment[factor] ?? 'not known').join(', ');
  return [...new Set(patches.map(words))].map((what) => ({
    what,
    where: placesOf(
      patches.filter((patch) => words(patch) === what),
      patches,
    ),
  }));
}

/** Strips as wholes where all of their patches are in it, else patches. */
function placesOf(own: readonly StonePatch[], all: readonly StonePatch[]): string[] {
  const ids = new Set(own.map(({ id }) => id));
  const strips = [...new Set(own.map(({ strip }) => strip))];
  return strips.flatMap((strip) => {
    const inStrip = all.filter((patch) => patch.strip === strip);
    if (strip !== null && inStrip.every(({ id }) => ids.has(id))) return [`strip ${strip}`];
    return [patchNames(own.filter((patch) => patch.strip === strip))];
  });
}
