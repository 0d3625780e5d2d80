import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { KeptAt } from '../../../records/keptAt.ts';
import type { ReportFigure } from '../../../records/setReport.ts';

/** A record's field as a reader finds it over HTTP or asks the studio for it. */
export function keptWords({ record, id, field }: KeptAt): string {
  return `${record} ${id}, ${field}`;
}

/** Records that a figure is filled from, as a reader knows them: one, and several. */
const recordWords: Readonly<Record<string, readonly [string, string]>> = {
  work: ['work', 'works'],
  stone: ['stone', 'stones'],
  run: ['log of the bench', 'logs of the bench'],
  series: ['list of pulls', 'lists of pulls'],
  approvals: ['approval', 'approvals'],
  comparison: ['comparison', 'comparisons'],
  ledger: ['ledger of an edition', 'ledgers of editions'],
  edition: ['edition', 'editions'],
  prints: ['list of numbered prints', 'lists of numbered prints'],
  plan: ['etch plan', 'etch plans'],
  material: ['density of the register', 'densities of the register'],
  report: ['amount typed in this report', 'amounts typed in this report'],
};

const howWords: Readonly<Record<ReportFigure['how'], string>> = {
  'as kept': 'As kept in',
  count: 'Counted in',
  sum: 'Added up from',
  'sum, millilitres by density': 'Weight added up from',
  'first minus second': 'The difference of',
};

/**
 * Where a figure comes from, in words for whoever reads it; each field by its id stands in the report's JSON.
 * @param figures all of the report, of which a difference names two
 */
export function sourceWords(figure: ReportFigure, figures: readonly ReportFigure[]): string {
  const { how, note } = figure;
  const sources = sourcesOf(figure, figures);
  const where = sources.length === 0 ? 'In no record yet' : `${howWords[how]} ${sources.join(' and ')}`;
  return note === '' ? where : `${where}. ${upperFirst(note)}`;
}

function sourcesOf({ from, of }: ReportFigure, figures: readonly ReportFigure[]): readonly string[] {
  if (of.length > 0)
    return of.map((name) => `“${figures.find((figure) => figure.name === name)?.label ?? name}”`);
  return [...new Set(from.map(({ record }) => record))].map((record) => {
    const count = new Set(from.filter((at) => at.record === record).map(({ id }) => id)).size;
    const [one, many] = recordWords[record] ?? [record, record];
    return count === 1 ? `one ${one}` : `${count} ${many}`;
  });
}
