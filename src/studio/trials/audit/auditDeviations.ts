import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding, TrialDeviation } from '../../../records/testStoneAnswer.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { countUnits, levelNames, unitOf } from '../answer/trialUnits.ts';
import { listWords } from '../listWords.ts';

/** What went otherwise than planned, held against who got what: with one treatment only, no cause can be assigned. */
export function auditDeviations(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
  deviations: readonly TrialDeviation[],
): AuditFinding[] {
  // The same thing on two stones is one.
  const kinds = [...new Set(deviations.map(({ what }) => what))];
  return kinds.flatMap((what) => {
    const touches = deviations.filter((one) => one.what === what);
    const inside = (row: TrialPatchRow) =>
      touches.some(
        ({ stone, patches }) => stone === row.stone && (patches === null || patches.includes(row.patch)),
      );
    const touched = rows.filter(inside);
    if (touched.length === 0) return [];
    if (touched.length === rows.length) return [everywhere(what)];
    const varied = factors.filter(({ name }) => levelNames(rows, name).length > 1);
    const found = varied.flatMap((factor) => deviationIn(rows, touched, factor, what));
    return found.length > 0 ? found : [spread(what)];
  });
}

function deviationIn(
  rows: readonly TrialPatchRow[],
  touched: readonly TrialPatchRow[],
  factor: TestFactor,
  what: string,
): AuditFinding[] {
  const hit = levelNames(touched, factor.name);
  const others = levelNames(rows, factor.name).filter((level) => !hit.includes(level));
  const whole = hit.every((level) => countOf(rows, factor, level) === countOf(touched, factor, level));
  if (whole && others.length > 0)
    return [
      {
        code: 'one-treatment',
        weight: 'no-cause',
        factors: [factor.name],
        sets: [hit, others],
        message: `${what}: all of ${listWords(hit)} and nothing else. No cause can be assigned between that and ${factor.name}.`,
        test: `Repeat ${listWords(hit)} as planned, beside one other ${factor.name}.`,
      },
    ];
  if (hit.length > 1) return [];
  const unit = unitOf(factor, rows);
  const left = rows.filter((row) => row.levels[factor.name] === hit[0] && !touched.includes(row));
  return [
    {
      code: 'part-of-treatment',
      weight: 'caution',
      factors: [factor.name],
      message: `${what}: part of ${hit[0]!} only. Without it ${hit[0]!} rests on ${countUnits(left, unit)} ${unit}${countUnits(left, unit) === 1 ? '' : 's'}.`,
      test: `Leave those patches out and see whether the answer stays; repeat ${hit[0]!} as planned.`,
    },
  ];
}

function countOf(rows: readonly TrialPatchRow[], factor: TestFactor, level: string): number {
  return rows.filter((row) => row.levels[factor.name] === level).length;
}

function everywhere(what: string): AuditFinding {
  return {
    code: 'several-treatments',
    weight: 'note',
    factors: [],
    message: `${what}: all patches alike. Differences between what was tried stand; how much holds at all was found under that.`,
    test: null,
  };
}

function spread(what: string): AuditFinding {
  return {
    code: 'several-treatments',
    weight: 'note',
    factors: [],
    message: `${what}: some patches of several kinds. Differences stand, with more scatter.`,
    test: null,
  };
}
