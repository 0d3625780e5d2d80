import type { HazardClass, Material, MaterialDraft } from '../../../records/material.ts';
import type { LineStage } from '../../../records/run.ts';
import { say } from '../../words/say.ts';
import { numberText, numberTrouble, typedNumber } from '../typedNumber.ts';

/** A material as typed; `hazards` and `stages` are words with blanks between. */
export type MaterialTyped = Readonly<
  Record<
    | 'name'
    | 'read'
    | 'hazards'
    | 'stages'
    | 'statements'
    | 'sheetDate'
    | 'sheetPlace'
    | 'limitMgPerM3'
    | 'flashPointC'
    | 'gramsPerMl'
    | 'protection'
    | 'firstAid'
    | 'storage'
    | 'waste'
    | 'note',
    string
  >
>;

export const materialFieldWords: Readonly<Record<keyof MaterialTyped, string>> = {
  name: say('What it is'),
  read: say('Was its safety data sheet read?'),
  hazards: say('Hazards that it states'),
  stages: say('Used in'),
  statements: say('Hazard statements, as printed'),
  sheetDate: say('Date of the sheet'),
  sheetPlace: say('Where the sheet lies'),
  limitMgPerM3: say('Limit at work'),
  flashPointC: say('Flash point'),
  gramsPerMl: say('Density'),
  protection: say('What to wear'),
  firstAid: say('First aid'),
  storage: say('Where it is kept'),
  waste: say('Where its waste goes'),
  note: say('Note'),
};

/** A material as a person would type it; null: an empty form. */
export function materialTyped(material: Material | null): MaterialTyped {
  return {
    name: material?.name ?? '',
    read: material !== null && material.hazards !== null ? 'yes' : '',
    hazards: (material?.hazards ?? []).join(' '),
    stages: (material?.stages ?? []).join(' '),
    statements: material?.statements ?? '',
    sheetDate: material?.sheetDate ?? '',
    sheetPlace: material?.sheetPlace ?? '',
    limitMgPerM3: numberText(material?.limitMgPerM3 ?? null),
    flashPointC: numberText(material?.flashPointC ?? null),
    gramsPerMl: numberText(material?.gramsPerMl ?? null),
    protection: material?.protection ?? '',
    firstAid: material?.firstAid ?? '',
    storage: material?.storage ?? '',
    waste: material?.waste ?? '',
    note: material?.note ?? '',
  };
}

/** What is wrong with what was typed, by field; bounds are those of the server. */
export function materialTroubles(typed: MaterialTyped): Partial<Record<keyof MaterialTyped, string | null>> {
  return {
    name: typed.name.trim() === '' ? say('A name is needed, such as low-odour white spirit.') : null,
    limitMgPerM3: numberTrouble(typed.limitMgPerM3, 0.001, 100_000),
    flashPointC: numberTrouble(typed.flashPointC, -100, 400),
    gramsPerMl: numberTrouble(typed.gramsPerMl, 0.3, 3),
  };
}

/** What was typed, as the server takes it; only for what has no trouble. */
export function materialOfTyped(typed: MaterialTyped): MaterialDraft {
  const words = (text: string) => text.split(' ').filter(Boolean);
  return {
    name: typed.name.trim(),
    stages: words(typed.stages) as LineStage[],
    hazards: typed.read === 'yes' ? (words(typed.hazards) as HazardClass[]) : null,
    statements: typed.statements,
    sheetDate: typed.sheetDate === '' ? null : typed.sheetDate,
    sheetPlace: typed.sheetPlace,
    limitMgPerM3: typedNumber(typed.limitMgPerM3),
    flashPointC: typedNumber(typed.flashPointC),
    gramsPerMl: typedNumber(typed.gramsPerMl),
    protection: typed.protection,
    firstAid: typed.firstAid,
    storage: typed.storage,
    waste: typed.waste,
    note: typed.note,
  };
}
