import { createHash } from 'node:crypto';
import { trialTemplatePdf } from '../../paper/sheets/trialTemplateSheet.ts';
import type { Paper } from '../../records/paper.ts';
import type { TrialAssignment, TrialDesign } from '../../records/trialDesign.ts';
import { csvLine } from './csvLine.ts';

/** All that a design may be written as. */
export const trialDesignFileNames = ['design.json', 'template.pdf', 'list.csv', 'readings.csv'] as const;

/**
 * A trial's design as files: `design.json` and `template.pdf` say nothing of who gets what, `list.csv` does, for whoever draws
 * and etches; `readings.csv` is to be filled in by whoever reads, without the list, and joined with it by the codes afterwards.
 */
export async function trialDesignFiles(
  { design, list }: { readonly design: TrialDesign; readonly list: readonly TrialAssignment[] },
  paper: Paper,
  createdAt: Date,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { whole, sub, perStone } = design.wish;
  const listed = [
    csvLine(['code', ...(perStone ? [perStone.name] : []), ...(whole ? [whole.name] : []), sub.name]),
    ...list.map((each) =>
      csvLine([each.code, ...(perStone ? [each.perStone!] : []), ...(whole ? [each.whole!] : []), each.sub]),
    ),
  ].join('');
  // Whoever reads keeps the design; the list that is opened afterwards must be this one.
  const seal = createHash('sha256').update(listed).digest('hex');
  const toFill = [
    csvLine(['code', 'stone', 'strip', 'reading']),
    ...design.patches.map(({ code, stone, strip }) => csvLine([code, String(stone), `${stone}${strip}`, ''])),
  ];
  const bytes = (text: string) => new TextEncoder().encode(text);
  return new Map<string, Uint8Array>([
    ['design.json', bytes(`${JSON.stringify({ ...design, seal }, null, 1)}\n`)],
    ['template.pdf', await trialTemplatePdf({ design, paper, createdAt })],
    ['list.csv', bytes(listed)],
    ['readings.csv', bytes(toFill.join(''))],
  ]);
}
