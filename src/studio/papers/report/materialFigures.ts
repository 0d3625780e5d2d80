import type { KeptAt } from '../../../records/keptAt.ts';
import type { HazardClass, Material } from '../../../records/material.ts';
import type { Replacement } from '../../../records/report.ts';
import type { HazardBalance, ReportFigure } from '../../../records/setReport.ts';
import { hazardWords } from '../../room/hazardWords.ts';
import { plansLaid } from './plansLaid.ts';
import type { ReportInput } from './reportInput.ts';

const asPlanned = 'as planned for the etches that were laid; what was poured beyond that is not logged';

/** Amounts of materials: laid by plan, before by what was typed, and by hazard class in grams. */
export function materialFigures(input: ReportInput): ReportFigure[] {
  const used = usedByPlan(input);
  return [
    ...[...used].map(
      ([material, from]): ReportFigure => ({
        name: `${material} ml`,
        label: `${capital(material)} laid`,
        value: tenth(from.reduce((sum, { ml }) => sum + ml, 0)),
        unit: 'ml',
        from: from.map(({ at }) => at),
        of: [],
        how: 'sum',
        note: asPlanned,
      }),
    ),
    ...input.report.replacements.map(
      ({ before, beforeMl, beforeFrom }, index): ReportFigure => ({
        name: `${before.toLowerCase()} before ml`,
        label: `${capital(before)} used before`,
        value: beforeMl,
        unit: 'ml',
        from:
          beforeMl === null
            ? []
            : [{ record: 'report', id: input.report.id, field: `replacements.${index}.beforeMl` }],
        of: [],
        how: 'as kept',
        note: beforeFrom === '' ? 'typed; its source is not stated' : `typed, from ${beforeFrom}`,
      }),
    ),
    ...balanced(input).flatMap(({ figures }) => figures),
  ];
}

/** The mass balance by hazard class; empty where no material was replaced. */
export function hazardBalance(input: ReportInput): {
  readonly rows: readonly HazardBalance[];
  readonly why: readonly string[];
} {
  const all = balanced(input);
  return {
    rows: all.map(({ row }) => row),
    why: [...new Set(all.flatMap(({ why }) => why))],
  };
}

interface Laid {
  readonly ml: number;
  readonly at: KeptAt;
}

function usedByPlan(input: ReportInput): ReadonlyMap<string, readonly Laid[]> {
  const used = new Map<string, Laid[]>();
  for (const { id, plan } of plansLaid(input)) {
    for (const [index, { material, ml }] of plan.batches.entries()) {
      const at: KeptAt = { record: 'plan', id, field: `plan.batches.${index}.ml` };
      used.set(material, [...(used.get(material) ?? []), { ml, at }]);
    }
  }
  return used;
}

/** One amount of one material on one side of the balance. */
interface Amount {
  readonly material: Material | null;
  readonly name: string;
  readonly parts: readonly Laid[] | null;
}

function balanced(input: ReportInput) {
  const { replacements, id } = input.report;
  if (replacements.length === 0) return [];
  const used = usedByPlan(input);
  const found = (materialId: string | null) =>
    input.materials.find((material) => material.id === materialId) ?? null;
  const before = replacements.map(({ before: name, beforeMaterialId, beforeMl }, index): Amount => {
    const at: KeptAt = { record: 'report', id, field: `replacements.${index}.beforeMl` };
    return {
      name,
      material: found(beforeMaterialId),
      parts: beforeMl === null ? null : [{ ml: beforeMl, at }],
    };
  });
  const now = takingPlace(replacements).map(
    ({ now: name, nowMaterialId }): Amount => ({
      name,
      material: found(nowMaterialId),
      parts: used.get(name) ?? null,
    }),
  );
  const classes = [...new Set([...before, ...now].flatMap(({ material }) => material?.hazards ?? []))];
  const order = Object.keys(hazardWords) as HazardClass[];
  return classes
    .toSorted((one, other) => order.indexOf(one) - order.indexOf(other))
    .map((hazard) => balanceOf(hazard, before, now));
}

/** What takes the place of others, each once: one material may replace two. */
function takingPlace(replacements: readonly Replacement[]): readonly Replacement[] {
  return replacements.filter(
    ({ now }, index) => replacements.findIndex((other) => other.now === now) === index,
  );
}

function balanceOf(hazard: HazardClass, before: readonly Amount[], now: readonly Amount[]) {
  const words = hazardWords[hazard];
  const was = grams(`${words} before g`, `What ${words}, before`, hazard, before);
  const is = grams(`${words} now g`, `What ${words}, now`, hazard, now);
  const known = was.figure.value !== null && is.figure.value !== null;
  const less: ReportFigure = {
    name: `${words} less g`,
    label: `What ${words}, less by`,
    value: known ? tenth(was.figure.value! - is.figure.value!) : null,
    unit: 'g',
    from: [],
    of: [was.figure.name, is.figure.name],
    how: 'first minus second',
    note: '',
  };
  const row: HazardBalance = {
    hazard,
    words,
    before: was.figure.name,
    now: is.figure.name,
    less: less.name,
  };
  return { row, figures: [was.figure, is.figure, less], why: [...was.why, ...is.why] };
}

/** Grams of one hazard class; null as soon as one part of it is not known. */
function grams(name: string, label: string, hazard: HazardClass, amounts: readonly Amount[]) {
  const why: string[] = [];
  const from: KeptAt[] = [];
  let [sum, known] = [0, true];
  for (const amount of amounts) {
    const { material } = amount;
    if (material === null || material.hazards === null) {
      why.push(`the safety data sheet of ${amount.name} is not entered, so its hazards are not known`);
      known = false;
      continue;
    }
    if (!material.hazards.includes(hazard)) continue;
    if (amount.parts === null || material.gramsPerMl === null) {
      why.push(
        amount.parts === null
          ? `how much ${amount.name} was used is not recorded`
          : `the density of ${amount.name} is not entered`,
      );
      known = false;
      continue;
    }
    for (const { ml, at } of amount.parts) {
      sum += ml * material.gramsPerMl;
      from.push(at, { record: 'material', id: material.id, field: 'gramsPerMl' });
    }
  }
  const figure: ReportFigure = {
    name,
    label,
    value: known ? tenth(sum) : null,
    unit: 'g',
    from: known ? from : [],
    of: [],
    how: 'sum of products',
    note: known ? 'whole material by its density' : why.join('; '),
  };
  return { figure, why };
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
