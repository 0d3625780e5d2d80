import type {
  Replacement,
  Report,
  ReportDraft,
  ReportPiece,
  ReportWordPart,
} from '../../../records/report.ts';
import { say } from '../../words/say.ts';
import { numberText, numberTrouble, typedNumber } from '../typedNumber.ts';
import { piecesOfTyped, typedOfPieces } from './typedPieces.ts';

/** A material that was replaced, as typed. */
export type ReplacementTyped = Readonly<
  Record<'before' | 'beforeMaterialId' | 'beforeMl' | 'beforeFrom' | 'now' | 'nowMaterialId', string>
>;

/** A report as typed; ids are words with blanks between, parts of its words JSON of their pieces, replacements of `ReplacementTyped[]`. */
export type ReportTyped = Readonly<
  Record<
    | 'title'
    | 'reader'
    | 'from'
    | 'to'
    | 'works'
    | 'comparisons'
    | 'editions'
    | 'aims'
    | 'tried'
    | 'found'
    | 'materials'
    | 'edition'
    | 'next'
    | 'replacements',
    string
  >
>;

export const reportFieldWords: Readonly<Record<keyof ReportTyped, string>> = {
  title: say('Title'),
  reader: say('Whom it is for'),
  from: say('From'),
  to: say('To'),
  works: say('Works it tells of'),
  comparisons: say('Comparisons it shows'),
  editions: say('Editions it tells of'),
  aims: say('Aims'),
  tried: say('What was tried'),
  found: say('What was found'),
  materials: say('Materials'),
  edition: say('The edition'),
  next: say('Next steps'),
  replacements: say('Materials that were replaced'),
};

const noReplacement: ReplacementTyped = {
  before: '',
  beforeMaterialId: '',
  beforeMl: '',
  beforeFrom: '',
  now: '',
  nowMaterialId: '',
};

/** A report as a person would type it; null: an empty form. */
export function reportTyped(report: Report | null): ReportTyped {
  const words = (part: ReportWordPart) => typedOfPieces(report?.words[part] ?? []);
  return {
    title: report?.title ?? '',
    reader: report?.reader ?? '',
    from: report?.from ?? '',
    to: report?.to ?? '',
    works: (report?.works ?? []).join(' '),
    comparisons: (report?.comparisons ?? []).join(' '),
    editions: (report?.editions ?? []).join(' '),
    aims: words('aims'),
    tried: words('tried'),
    found: words('found'),
    materials: words('materials'),
    edition: words('edition'),
    next: words('next'),
    replacements: JSON.stringify((report?.replacements ?? []).map(replacementTyped)),
  };
}

function replacementTyped(one: Replacement): ReplacementTyped {
  return {
    before: one.before,
    beforeMaterialId: one.beforeMaterialId ?? '',
    beforeMl: numberText(one.beforeMl),
    beforeFrom: one.beforeFrom,
    now: one.now,
    nowMaterialId: one.nowMaterialId ?? '',
  };
}

/** The replacements of a form, in their order. */
export function replacementsIn({
  replacements,
}: Pick<ReportTyped, 'replacements'>): readonly ReplacementTyped[] {
  return replacements === '' ? [] : (JSON.parse(replacements) as ReplacementTyped[]);
}

/** The same with one changed, one more (`index` past the end), or one left out (`change` null). */
export function withReplacement(
  typed: Pick<ReportTyped, 'replacements'>,
  index: number,
  change: Partial<ReplacementTyped> | null,
): Pick<ReportTyped, 'replacements'> {
  const all = replacementsIn(typed);
  const next =
    change === null
      ? all.filter((_, at) => at !== index)
      : index >= all.length
        ? [...all, { ...noReplacement, ...change }]
        : all.map((one, at) => (at === index ? { ...one, ...change } : one));
  return { replacements: JSON.stringify(next) };
}

/** What is wrong with what was typed, by field; bounds are those of the server. */
export function reportTroubles(typed: ReportTyped): Partial<Record<keyof ReportTyped, string | null>> {
  const wrong = replacementsIn(typed)
    .map(({ before, now, beforeMl }) =>
      before.trim() === '' || now.trim() === ''
        ? say('Say what was used before and what takes its place.')
        : numberTrouble(beforeMl, 0, 1e6),
    )
    .find((trouble) => trouble !== null);
  return {
    title: typed.title.trim() === '' ? say('A title is needed.') : null,
    to:
      typed.from !== '' && typed.to !== '' && typed.to < typed.from ? say('It ends before it begins.') : null,
    replacements: wrong ?? null,
  };
}

/** What was typed, as the server takes it; only for what has no trouble. */
export function reportOfTyped(typed: ReportTyped): ReportDraft {
  const ids = (text: string) => text.split(' ').filter(Boolean);
  const { aims, tried, found, materials, edition, next } = typed;
  return {
    title: typed.title.trim(),
    reader: typed.reader.trim(),
    from: typed.from === '' ? null : typed.from,
    to: typed.to === '' ? null : typed.to,
    works: ids(typed.works),
    comparisons: ids(typed.comparisons),
    editions: ids(typed.editions),
    words: {
      aims: piecesOfTyped(aims),
      tried: piecesOfTyped(tried),
      found: piecesOfTyped(found),
      materials: piecesOfTyped(materials),
      edition: piecesOfTyped(edition),
      next: piecesOfTyped(next),
    },
    replacements: replacementsIn(typed).map((one) => ({
      before: one.before.trim(),
      beforeMaterialId: one.beforeMaterialId === '' ? null : one.beforeMaterialId,
      beforeMl: typedNumber(one.beforeMl),
      beforeFrom: one.beforeFrom.trim(),
      now: one.now.trim(),
      nowMaterialId: one.nowMaterialId === '' ? null : one.nowMaterialId,
    })),
  };
}

/** What a reader would look for and nobody chose or wrote yet, in the order of the form. */
export function reportWants({ works, words }: Pick<Report, 'works' | 'words'>): readonly ReportWant[] {
  const written = (['aims', 'tried', 'found', 'next'] as const).filter((part) => words[part].every(isBlank));
  return works.length === 0 ? ['works', ...written] : written;
}

function isBlank(piece: ReportPiece): boolean {
  return typeof piece === 'string' && piece.trim() === '';
}

/** A field of the form that is still empty. */
export type ReportWant = 'works' | 'aims' | 'tried' | 'found' | 'next';

/** The id under which a field of the form stands on its page. */
export function reportFieldId(field: keyof ReportTyped): string {
  return `report-${field}`;
}
