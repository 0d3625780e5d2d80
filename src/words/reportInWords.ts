import type { ReportBlock, SetReport } from '../records/setReport.ts';
import { isPlainEnglish } from './asWritten.ts';
import { textInWords } from './inWords.ts';
import { runsInWords } from './runsInWords.ts';
import { isTold, told as toldSentence } from './told.ts';

/**
 * A report in the words, units and days in use, once for all that it is set as and for its page. What its writer wrote stays: title, reader, the
 * words of its parts, names of works, stones and what was replaced.
 * @param finish done to each text of it, such as marking it as told already
 */
export function reportInWords(report: SetReport, finish: (text: string) => string): SetReport {
  if (isPlainEnglish()) return report;
  const told = (text: string) => finish(textInWords(text));
  return {
    ...report,
    title: finish(report.title),
    reader: finish(report.reader),
    period: told(report.period),
    parts: report.parts.map(({ name, blocks }) => ({
      name: told(name),
      blocks: blocks.map((block) => blockInWords(block, told, finish)),
    })),
    figures: report.figures.map((figure) => ({ ...figure, label: told(figure.label) })),
  };
}

function blockInWords(
  block: ReportBlock,
  told: (text: string) => string,
  finish: (text: string) => string,
): ReportBlock {
  // Over lines stands a work’s title, or words of ours around one: a title is told in no pieces.
  const heading = (name: string) => finish(isTold(name) ? toldSentence(name) : name);
  switch (block.kind) {
    case 'words':
      return {
        ...block,
        paragraphs: block.paragraphs.map((runs) =>
          runsInWords(runs).map((run) => ({ ...run, text: finish(run.text) })),
        ),
      };
    case 'lines':
      return {
        ...block,
        name: heading(block.name),
        lines: block.lines.map((line) => ({
          ...line,
          label: told(line.label),
          value: line.value === null ? null : told(line.value),
        })),
      };
    case 'comparison':
      return {
        ...block,
        title: finish(block.title),
        finding: block.finding === null ? null : told(block.finding),
      };
    case 'balance':
      return {
        ...block,
        rows: block.rows.map((row) => ({ ...row, words: told(row.words) })),
        why: block.why.map(told),
      };
    case 'gaps':
      return {
        ...block,
        groups: block.groups.map((group) => ({
          ...group,
          name: told(group.name),
          items: group.items.map(told),
        })),
      };
    case 'figures':
      return block;
    default:
      return block satisfies never;
  }
}
