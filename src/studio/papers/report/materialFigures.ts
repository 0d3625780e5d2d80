import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { KeptAt } from '../../../records/keptAt.ts';
import type { Replacement } from '../../../records/report.ts';
import type { PouredUnit } from '../../../records/run.ts';
import type { ReportFigure } from '../../../records/setReport.ts';
import { balanced } from './hazardBalance.ts';
import type { ReportInput } from './reportInput.ts';
import { inUnit, type UsedAmount, type UsedMaterial, usedMaterials } from './usedMaterials.ts';

const units: readonly PouredUnit[] = ['ml', 'g'];

/** Amounts of materials: by the log, only planned where nothing was logged, typed for what was before, and by hazard class. */
export function materialFigures(input: ReportInput): ReportFigure[] {
  return [
    ...usedMaterials(input).flatMap(usedFigures),
    ...input.report.replacements.map((one, index) => beforeFigure(one, index, input.report.id)),
    ...balanced(input).flatMap(({ figures }) => figures),
  ];
}

function usedFigures({ name, poured, onlyPlanned, alsoUnmeasured }: UsedMaterial): ReportFigure[] {
  const unmeasured = alsoUnmeasured ? 'more was used without being measured' : '';
  const figures = units.flatMap((unit): ReportFigure[] => {
    const log = inUnit(poured, unit);
    const plan = inUnit(onlyPlanned, unit);
    if (log.length + plan.length === 0) return [];
    const all = summed(`${name} ${unit}`, `${upperFirst(name)} used`, unit, [...log, ...plan]);
    const known =
      plan.length === 0
        ? 'from the log'
        : log.length === 0
          ? 'only planned, for the etches that were laid: nothing was logged; ± from the areas alone'
          : 'partly from the log, partly only planned, that with the ± of its areas alone';
    const parts = [
      ...(log.length === 0 || plan.length === 0
        ? []
        : [summed(`${name} poured ${unit}`, `${upperFirst(name)} poured, by the log`, unit, log)]),
      ...(plan.length === 0
        ? []
        : [
            summed(
              `${name} only planned ${unit}`,
              `${upperFirst(name)} only planned, nothing logged`,
              unit,
              plan,
            ),
          ]),
    ];
    return [{ ...all, note: [known, unmeasured].filter(Boolean).join('; ') }, ...parts];
  });
  if (figures.length > 0 || !alsoUnmeasured) return figures;
  const none = summed(`${name} ml`, `${upperFirst(name)} used`, 'ml', []);
  return [{ ...none, value: null, plusMinus: null, note: 'used, and nobody measured how much' }];
}

function summed(name: string, label: string, unit: PouredUnit, all: readonly UsedAmount[]): ReportFigure {
  const arms = all.map(({ value, high }) => (high === null ? null : high - value));
  return {
    name,
    label,
    value: tenth(all.reduce((sum, { value }) => sum + value, 0)),
    plusMinus: arms.some((arm) => arm === null)
      ? null
      : tenth(arms.reduce<number>((sum, arm) => sum + arm!, 0)),
    unit,
    from: all.map(({ at }) => at),
    of: [],
    how: 'sum',
    note: '',
  };
}

function beforeFigure(
  { before, beforeMl, beforeFrom }: Replacement,
  index: number,
  id: string,
): ReportFigure {
  const at: KeptAt = { record: 'report', id, field: `replacements.${index}.beforeMl` };
  return {
    name: `${before.toLowerCase()} before ml`,
    label: `${upperFirst(before)} used before, as typed`,
    value: beforeMl,
    plusMinus: null,
    unit: 'ml',
    from: beforeMl === null ? [] : [at],
    of: [],
    how: 'as kept',
    note: beforeFrom === '' ? 'typed; its source is not stated' : `typed, from ${beforeFrom}`,
  };
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
