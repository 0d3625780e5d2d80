import { describe, expect } from 'vitest';
import { seededRandom } from '../../src/foundation/random.ts';
import { analyseTrial } from '../../src/studio/trials/analyseTrial.ts';
import { answerTestStone } from '../../src/studio/trials/answer/answerTestStone.ts';
import { foundPatch, shuffled } from '../../src/studio/trials/answer/trials.testing.ts';
import { eachRow, near, publishedRows } from './rows.ts';

const oats = publishedRows('trials.json').find((row) => row.id === 'splitplot-oats')!;
const all = oats.inputs.rows as readonly (readonly [string, string, number, number])[];
/** Victory came only with 0.6, and 0.6 with nothing else. */
const kept = all.filter(([, variety, nitrogen]) => (variety === 'Victory') === (nitrogen === 0.6));
const rows = publishedRows('aliased-oats.json');

type Line = Readonly<Record<string, number>>;

/** A stone a block, places drawn by lot: coverage a thousandth of the yield. */
function stones() {
  const random = seededRandom(3);
  return [...new Set(kept.map(([block]) => block))].map((block) => {
    const own = kept.filter((one) => one[0] === block);
    const places = shuffled(own, random);
    return {
      stone: block,
      sizeMm: [400, 500] as const,
      prints: 1,
      factors: ['variety', 'nitrogen'].map((name) => ({ name, givenTo: 'patch' as const })),
      findings: own.map((one) => {
        const [, variety, nitrogen, read] = one;
        const at = places.indexOf(one);
        return foundPatch(
          { row: at % 3, column: Math.floor(at / 3), strip: null },
          { variety, nitrogen: nitrogen.toFixed(1) },
          { hold: 'held', printed: read / 1000, drawn: 0 },
        );
      }),
    };
  });
}

describe('treatments of which one level never stood apart', () => {
  eachRow(rows, /^aliased-oats-blocks$/, 1, (row) => {
    const { tests, contrasts, components, audit } = answerTestStone(stones(), []);
    const expected = row.expected as Readonly<Record<'residual' | 'variety' | 'nitrogen', Line>> & {
      readonly differences: Readonly<Record<string, Line>>;
    };
    expect(audit.find(({ code }) => code === 'never-apart')!.message).toMatch(
      /no cause can be assigned between variety and nitrogen\. What stands .*Golden\.rain and Marvellous/,
    );
    for (const name of ['variety', 'nitrogen'] as const) {
      const found = tests.find(({ factor }) => factor === name)!;
      expect(found.df).toBe(expected[name].df);
      near(row, found.denDf!, expected.residual.df!);
      near(row, found.f!, expected[name].f!);
      near(row, found.p!, expected[name].p!);
    }
    near(row, 1e6 * components.at(-1)!.variance, expected.residual.ms!);
    for (const [pair, wanted] of Object.entries(expected.differences)) {
      const found = contrasts.find((one) => `${one.level}-${one.against}` === pair)!;
      near(row, 1000 * found.value, wanted.value!);
      near(row, 1000 * found.standardError, wanted.error!);
    }
    const tied = row.inputs.tied as readonly string[];
    expect(contrasts.some((one) => tied.includes(one.level) || tied.includes(one.against))).toBe(false);
  });

  eachRow(rows, /^aliased-oats-strips$/, 1, (row) => {
    const patches = kept.map(([block, variety, nitrogen, response]) => ({
      response,
      blocks: [block],
      whole: variety,
      sub: nitrogen.toFixed(1),
      strip: null,
    }));
    const { anova, components, differences, warnings } = analyseTrial(
      { rows: patches, unreadLines: [] },
      { response: 'yield', blocks: ['block'], whole: 'variety', sub: 'nitrogen', strip: null },
      null,
    );
    const expected = row.expected as { variances: number[] } & Record<'variety' | 'nitrogen', Line>;
    for (const [k, variance] of expected.variances.entries()) near(row, components[k]!.variance, variance);
    const [variety, nitrogen] = anova;
    expect([variety!.df, nitrogen!.df]).toEqual([expected.variety.df, expected.nitrogen.df]);
    near(row, variety!.F!, expected.variety.f!);
    near(row, nitrogen!.F!, expected.nitrogen.f!);
    near(row, nitrogen!.denDf!, expected.nitrogen.den_df!);
    expect(variety!.denDf!).toBeLessThanOrEqual(expected.variety.most_df!);
    expect(differences.map(({ level }) => level)).not.toContain('Victory');
    expect(warnings.filter(({ code }) => code === 'never-apart')).toHaveLength(2);
  });
});
