import { trialTracingPdf } from '../../paper/sheets/trialTracingSheet.ts';
import type { Paper } from '../../records/paper.ts';
import type { TrialAssignment, TrialDesign } from '../../records/trialDesign.ts';
import { trialSteps } from '../../studio/trials/design/trialSteps.ts';
import { csvLine } from './csvLine.ts';
import { sealedList } from './sealedList.ts';

/** All that a design may be written as. */
export const trialDesignFileNames = [
  'design.json',
  'tracing.pdf',
  'list.csv',
  'steps.csv',
  'readings.csv',
] as const;

/**
 * A trial's design as files: `design.json` and `tracing.pdf` say nothing of who gets what, `list.csv` does, for whoever draws
 * and etches, and `steps.csv`, the same in the order in which it is done; `readings.csv` is to be filled in by whoever reads, without the list, and joined with it by the codes afterwards.
 */
export async function trialDesignFiles(
  { design, list }: { readonly design: TrialDesign; readonly list: readonly TrialAssignment[] },
  paper: Paper,
  createdAt: Date,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { text, seal } = sealedList(design.wish, list);
  const toFill = [
    csvLine(['code', 'stone', 'strip', 'reading']),
    ...design.patches.map(({ code, stone, strip }) =>
      csvLine([code, String(stone), `stone ${stone}, strip ${strip}`, '']),
    ),
  ];
  const steps = [
    csvLine([
      'step',
      'stone',
      'treatment',
      'level',
      'strip',
      'patches',
      'done at',
      'by',
      'otherwise than planned',
    ]),
    ...trialSteps(design.wish, { patches: design.patches, list }).map((step, index) =>
      csvLine([
        String(index + 1),
        String(step.stone),
        step.treatment,
        step.level,
        step.strip ?? '',
        step.codes.join('; '),
        ...['', '', ''],
      ]),
    ),
  ];
  const bytes = (words: string) => new TextEncoder().encode(words);
  return new Map<string, Uint8Array>([
    ['design.json', bytes(`${JSON.stringify({ ...design, seal }, null, 1)}\n`)],
    ['tracing.pdf', await trialTracingPdf({ design, paper, createdAt })],
    ['list.csv', bytes(text)],
    ['steps.csv', bytes(steps.join(''))],
    ['readings.csv', bytes(toFill.join(''))],
  ]);
}
