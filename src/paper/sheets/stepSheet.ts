import { areaDoubtWords } from '../../studio/etch/areaDoubt.ts';
import { benchRun } from '../../studio/etch/benchRun.ts';
import { planTitle } from './laidName.ts';
import { fittedSheetPdf, type SheetContent } from './pdfDocument.ts';
import { liftPart, movePart } from './step/clockPart.ts';
import { layPart } from './step/layPart.ts';
import { mixPart } from './step/mixPart.ts';
import { stepHead } from './step/stepHead.ts';
import { stepPart } from './step/stepParts.ts';
import type { SheetLook, StepSheetInput } from './step/stepSheetInput.ts';

/**
 * The step sheet of a first etch, on one page as large as it fits: what to mix, what to lay in which order and when, the
 * moves, the lifts with their cloths, buffing, end signs and cautions. A plan that can't be kept, or isn't known to be,
 * says so first with the changes offered, and carries no clock. Equal input gives equal bytes.
 */
export async function stepSheetPdf(input: StepSheetInput): Promise<Uint8Array> {
  const { plan, request, paper, createdAt } = input;
  const title = planTitle(input.title);
  const run = benchRun(plan);
  return fittedSheetPdf({
    title: `${title}: step sheet`,
    createdAt,
    paper,
    foot: `${title} · ${request.table.name}, issue ${request.table.version} · film ${request.filmMm} mm`,
    content: (scale, widthPt) => {
      const look = { scale, widthPt };
      return [
        ...stepHead({ ...input, title }, look),
        ...mixPart(input, look),
        ...layPart(run.lines, request, look),
        ...movePart(run, look),
        ...liftPart(run, look),
        ...cautionPart(input, look),
      ];
    },
  });
}

function cautionPart({ plan }: StepSheetInput, look: SheetLook): SheetContent[] {
  return [
    stepPart(look, 'Take care'),
    { ul: [...plan.cautions, areaDoubtWords], fontSize: 9.5 * look.scale },
  ];
}
