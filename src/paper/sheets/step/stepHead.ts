import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { EtchPlan, ScheduleChange } from '../../../records/etch.ts';
import { benchRun } from '../../../studio/etch/benchRun.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import type { SheetContent } from '../pdfDocument.ts';
import type { SheetLook, StepSheetInput } from './stepSheetInput.ts';

/** What the sheet is, whether the plan can be kept and, where it can't, what would change that. */
export function stepHead(
  { plan, request, title, dateText }: StepSheetInput,
  { scale }: SheetLook,
): SheetContent[] {
  const { schedule } = plan;
  const hands = request.people === 1 ? 'one person' : 'two people';
  return [
    {
      columns: [
        { text: `First etch, step sheet · ${title}`, bold: true, fontSize: 10 * scale, width: '*' },
        { text: dateText, fontSize: 10 * scale, alignment: 'right', width: 'auto', noWrap: true },
      ],
    },
    {
      text: verdictWords(plan, hands),
      font: 'ArchivoNarrow',
      bold: true,
      fontSize: 22 * scale,
      lineHeight: 1,
      margin: [0, 2 * scale, 0, 2 * scale],
    },
    { text: underVerdict(plan), fontSize: 10 * scale },
    ...(schedule.feasible === true ? [] : [offeredChanges(schedule.changes, scale)]),
  ];
}

function verdictWords(plan: EtchPlan, hands: string): string {
  const { feasible } = plan.schedule;
  switch (feasible) {
    case true:
      return `${hands === 'one person' ? 'One person' : 'Two people'}: ${minutesSeconds(benchRun(plan).lastsSeconds ?? 0)} from first touch to last`;
    case false:
      return `This plan can’t be kept by ${hands}`;
    case 'unknown':
      return `Not known whether ${hands} can keep this plan`;
    default:
      return feasible satisfies never;
  }
}

function underVerdict({ schedule }: EtchPlan): string {
  if (schedule.feasible !== true) {
    const reason = schedule.reason ?? 'no reason was found';
    return `${upperFirst(reason)}. So there is no clock on this sheet. Before you lay, choose:`;
  }
  const parts = [
    schedule.skewSeconds === null ? null : `all lifted within ${minutesSeconds(schedule.skewSeconds)}`,
    schedule.longestUntouchedSeconds === null
      ? null
      : `nothing untouched longer than ${minutesSeconds(schedule.longestUntouchedSeconds)}`,
  ].filter((part) => part !== null);
  return `${['Minutes:seconds from the first touch', ...parts].join('; ')}.`;
}

function offeredChanges(changes: readonly ScheduleChange[], scale: number): SheetContent {
  const offered =
    changes.length > 0
      ? changes.map(({ feasible, effect }) => [{ text: helps(feasible), bold: true }, { text: effect }])
      : [
          [
            { text: 'Nothing', bold: true },
            { text: 'No change was found to offer: plan fewer or smaller zones at a time.' },
          ],
        ];
  return {
    margin: [0, 3 * scale, 0, 0],
    fontSize: 11 * scale,
    layout: 'noBorders',
    table: { widths: [72 * scale, '*'], body: offered },
  };
}

function helps(feasible: ScheduleChange['feasible']): string {
  switch (feasible) {
    case true:
      return 'Helps';
    case false:
      return 'No help';
    case 'unknown':
      return 'Not known';
    default:
      return feasible satisfies never;
  }
}
