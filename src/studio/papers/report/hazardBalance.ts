import type { KeptAt } from '../../../records/keptAt.ts';
import type { HazardClass, Material } from '../../../records/material.ts';
import type { Replacement } from '../../../records/report.ts';
import type { HazardBalance, ReportFigure } from '../../../records/setReport.ts';
import { hazardWords } from '../../room/hazardWords.ts';
import type { ReportInput } from './reportInput.ts';
import { type UsedAmount, type UsedMaterial, usedMaterials } from './usedMaterials.ts';

/** One amount of one material on one side of the balance; no parts: nothing is known of it. */
interface Amount {
  readonly material: Material | null;
  readonly name: string;
  readonly parts: readonly UsedAmount[] | null;
  readonly onlyPlanned: boolean;
  readonly alsoUnmeasured: boolean;
}

/** What is of a class, as a figure’s label begins. */
const ofClass: Readonly<Record<HazardClass, string>> = {
  flammable: 'What burns',
  oxidising: 'What feeds fire',
  'dust-explosive': 'What can explode as dust',
  corrosive: 'What eats skin and eyes',
  toxic: 'What is poisonous',
  sensitising: 'What can cause allergy or asthma',
  'long-term': 'What can harm over years',
  irritant: 'What irritates',
  environment: 'What harms water life',
};

interface Balanced {
  readonly row: HazardBalance;
  readonly figures: readonly ReportFigure[];
  readonly why: readonly string[];
}

/** The mass balance by hazard class; empty where no material was replaced. */
export function hazardBalance(input: ReportInput): {
  readonly rows: readonly HazardBalance[];
  readonly why: readonly string[];
} {
  const all = balanced(input);
  return { rows: all.map(({ row }) => row), why: [...new Set(all.flatMap(({ why }) => why))] };
}

/** By hazard class: what the typed amounts before weighed, and what the log and, failing that, the plans say of now. */
export function balanced(input: ReportInput): readonly Balanced[] {
  const { replacements, id } = input.report;
  if (replacements.length === 0) return [];
  const used = usedMaterials(input);
  const found = (materialId: string | null) =>
    input.materials.find((material) => material.id === materialId) ?? null;
  const before = replacements.map(({ before: name, beforeMaterialId, beforeMl }, index): Amount => {
    const at: KeptAt = { record: 'report', id, field: `replacements.${index}.beforeMl` };
    return {
      name,
      material: found(beforeMaterialId),
      parts: beforeMl === null ? null : [{ value: beforeMl, unit: 'ml', low: null, high: null, at }],
      onlyPlanned: false,
      alsoUnmeasured: false,
    };
  });
  const now = takingPlace(replacements).map((one) => amountNow(one, used, found(one.nowMaterialId)));
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

/** By its name, or by its entry in the register where the log names that. */
function amountNow(
  { now, nowMaterialId }: Replacement,
  used: readonly UsedMaterial[],
  material: Material | null,
): Amount {
  const all = used.filter(
    ({ name, materialIds }) =>
      name.toLowerCase() === now.toLowerCase() ||
      (nowMaterialId !== null && materialIds.includes(nowMaterialId)),
  );
  const parts = all.flatMap(({ poured, onlyPlanned }) => [...poured, ...onlyPlanned]);
  return {
    name: now,
    material,
    parts: parts.length === 0 ? null : parts,
    onlyPlanned: all.some(({ onlyPlanned }) => onlyPlanned.length > 0),
    alsoUnmeasured: all.some(({ alsoUnmeasured }) => alsoUnmeasured),
  };
}

function balanceOf(hazard: HazardClass, before: readonly Amount[], now: readonly Amount[]): Balanced {
  const words = hazardWords[hazard];
  const was = grams(`${words} before g`, `${ofClass[hazard]}, before, by typed amounts`, hazard, before);
  const is = grams(`${words} now g`, `${ofClass[hazard]}, now`, hazard, now);
  const known = was.figure.value !== null && is.figure.value !== null;
  const less: ReportFigure = {
    name: `${words} less g`,
    label: `${ofClass[hazard]}, less by`,
    value: known ? tenth(was.figure.value! - is.figure.value!) : null,
    plusMinus:
      known && was.figure.plusMinus !== null && is.figure.plusMinus !== null
        ? tenth(was.figure.plusMinus + is.figure.plusMinus)
        : null,
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
  let [sum, arm, known] = [0, 0 as number | null, true];
  for (const { material, name: what, parts, onlyPlanned, alsoUnmeasured } of amounts) {
    if (material === null || material.hazards === null) {
      why.push(`the safety data sheet of ${what} is not entered, so its hazards are not known`);
      known = false;
      continue;
    }
    if (!material.hazards.includes(hazard)) continue;
    const needsDensity = parts?.some(({ unit }) => unit === 'ml') ?? false;
    if (parts === null || (needsDensity && material.gramsPerMl === null)) {
      why.push(
        parts === null
          ? `how much ${what} was used is not recorded`
          : `the density of ${what} is not entered`,
      );
      known = false;
      continue;
    }
    if (onlyPlanned)
      why.push(`some of the ${what} is only planned: nothing was logged of it where its etch was laid`);
    if (alsoUnmeasured) why.push(`more ${what} was used without being measured`);
    for (const { value, unit, high, at } of parts) {
      const density = unit === 'g' ? 1 : material.gramsPerMl!;
      sum += value * density;
      arm = arm === null || high === null ? null : arm + (high - value) * density;
      from.push(at);
      if (unit === 'ml') from.push({ record: 'material', id: material.id, field: 'gramsPerMl' });
    }
  }
  const note = [...new Set(why)].join('; ');
  const figure: ReportFigure = {
    name,
    label,
    value: known ? tenth(sum) : null,
    // none of the class is a sure nought
    plusMinus: known && arm !== null ? tenth(arm) : null,
    unit: 'g',
    from: known ? from : [],
    of: [],
    how: 'sum, millilitres by density',
    note: known ? ['whole material by its density', note].filter(Boolean).join('; ') : note,
  };
  return { figure, why };
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
