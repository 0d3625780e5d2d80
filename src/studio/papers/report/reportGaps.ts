import type { ReportGaps } from '../../../records/setReport.ts';
import { documentationOf } from '../../editions/documentation.ts';
import { gapsWithoutStone } from '../gaps.ts';
import type { ReportInput } from './reportInput.ts';

/** What nobody recorded and a reader would ask for, under what it is of; nothing is listed twice. */
export function reportGaps(input: ReportInput): readonly ReportGaps[] {
  const { works, comparisons, editions, report } = input;
  const replaced = report.replacements
    .filter(({ beforeMl }) => beforeMl === null)
    .map(({ before }) => `how much ${before} was used before`);
  const groups: readonly ReportGaps[] = [
    ...works.map((records): ReportGaps => {
      const { id, title, stone } = records.work;
      const items = gapsWithoutStone(records);
      return { record: 'work', id, name: `${title}, on ${stone.name}`, items };
    }),
    ...comparisons.map(({ id, title, record }): ReportGaps => {
      const items = record?.verdict === 'ok' ? [] : ['what it measured'];
      return { record: 'comparison', id, name: title, items };
    }),
    ...editions.map((kept): ReportGaps => {
      const lines = documentationOf(kept).parts.flatMap((part) => part.lines);
      const items = lines.filter(({ value }) => value === null).map(({ label }) => lowerFirst(label));
      return { record: 'edition', id: kept.edition.id, name: `The edition ${kept.edition.title}`, items };
    }),
    { record: 'report', id: report.id, name: 'Materials that were replaced', items: replaced },
  ];
  return groups.filter(({ items }) => items.length > 0);
}

/** Each gap by itself, with what it is of. */
export function gapSentences(groups: readonly ReportGaps[]): readonly string[] {
  return groups.flatMap(({ name, items }) => items.map((item) => `${item} (${name})`));
}

/** Lower case at the start, but for letters that stand for something, such as “C.P.”. */
function lowerFirst(label: string): string {
  return label.slice(0, 1).toLowerCase() + label.slice(1);
}
