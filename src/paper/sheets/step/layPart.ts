import { areaDoubts, doubtWords, filmDoubtMl } from '../../../studio/etch/areaDoubt.ts';
import type { BenchLine } from '../../../studio/etch/benchRun.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { endSigns } from '../../../studio/etch/endSigns.ts';
import { nothingLaid } from '../../../studio/etch/plannedZone.ts';
import { asWritten } from '../../../words/asWritten.ts';
import { textInWords } from '../../../words/inWords.ts';
import { fitText } from '../../charts/chartInk.ts';
import { hatchSwatchSvg } from '../../charts/etchMap/mapLegend.ts';
import { laidName } from '../laidName.ts';
import type { SheetContent } from '../pdfDocument.ts';
import { partsWords } from './mixPart.ts';
import { columnName, figure, mlText, stepPart } from './stepParts.ts';
import type { SheetLook, StepSheetInput } from './stepSheetInput.ts';

/** What the two columns of words need at least, and how many places may have a name of two lines. */
const wordsLeast = 170;
const linesOfTwo = 16;

/** Every place in the order of laying: clock, hatch and letter, millilitres and parts, how long it stays and how often it moves. */
export function layPart(
  lines: readonly BenchLine[],
  request: StepSheetInput['request'],
  look: SheetLook,
): SheetContent[] {
  const doubts = areaDoubts(request);
  const doubtOf = ({ row }: BenchLine) => filmDoubtMl(doubts.get(row.id), request.filmMm);
  const clocked = lines.some((line) => line.person !== null);
  const who = clocked && request.people === 2;
  const before = [...(clocked ? [36] : []), ...(who ? [26] : []), 33, 24];
  const after = clocked ? [40, 46, 38, 38] : [40, 52, 110];
  const gap = 4;
  const taken = [...before, ...after].reduce((sum, width) => sum + width + gap, 2 * gap);
  const scale = Math.min(look.scale, look.widthPt / (taken + wordsLeast));
  const rest = look.widthPt / scale - taken;
  const widths = [...before, 0.42 * rest, 0.58 * rest, ...after].map((width) => width * scale);
  const nameRoom = 0.42 * rest * (lines.length > linesOfTwo ? 1 : 1.8);
  const head = [
    ...(clocked ? [columnName('lay at', scale)] : []),
    ...(who ? [columnName('hands', scale)] : []),
    { text: '', colSpan: 2 },
    '',
    columnName('place', scale),
    columnName('measure out (± ml)', scale),
    columnName('ml', scale, true),
    columnName('move within', scale, true),
    ...(clocked
      ? [columnName('stays', scale, true), columnName('lift at', scale, true)]
      : [columnName('stays: least · wanted · most', scale, true)]),
  ];
  return [
    stepPart(look, 'Lay, in this order', endSigns.lay),
    {
      table: {
        headerRows: 1,
        dontBreakRows: true,
        widths,
        body: [head, ...lines.map((line) => lineCells(line, doubtOf(line), clocked, who, scale, nameRoom))],
      },
      layout: {
        hLineWidth: (row) => (row === 0 ? 0 : 0.4),
        vLineWidth: () => 0,
        hLineColor: () => '#1a1714',
        paddingLeft: () => 0,
        paddingRight: () => gap * scale,
        paddingTop: () => 1.4 * scale,
        paddingBottom: () => 1 * scale,
      },
    },
  ];
}

function lineCells(
  line: BenchLine,
  doubtMl: number | null,
  clocked: boolean,
  who: boolean,
  scale: number,
  nameRoom: number,
): SheetContent[] {
  const { row, person, liftAt } = line;
  const right = (text: string) => figure(text, scale, 'right');
  const small = (text: string): SheetContent => ({
    ...right(text),
    fontSize: 12 * scale,
    margin: [0, 2.6 * scale, 0, 0],
  });
  const clock = (seconds: number | null) => (seconds === null ? '' : minutesSeconds(seconds));
  const { etch, contactSeconds: contact } = row;
  const stays = row.layTo !== null && row.endsAt !== null ? minutesSeconds(row.endsAt - row.layTo) : '';
  return [
    ...(clocked ? [figure(clock(row.layFrom), scale)] : []),
    ...(who ? [figure(person === null ? '' : String(person), scale)] : []),
    { svg: swatch(row.strength), width: 28 * scale, margin: [0, 1.6 * scale, 0, 0] },
    figure(asWritten(row.letter), scale),
    {
      text: asWritten(fitText(textInWords(laidName(line)), nameRoom, 10.5)),
      bold: true,
      fontSize: 10.5 * scale,
      margin: [0, 4.4 * scale, 0, 0],
    },
    {
      text: etch
        ? `${etch.parts.length > 1 ? partsWords(etch.parts) : etch.name} (${doubtWords(doubtMl).replace(/ (?=\d)/, '\u00a0')})`
        : row.basis === nothingLaid
          ? 'nothing is laid here'
          : 'no rule here: test a patch first',
      fontSize: 9.5 * scale,
      margin: [0, 5.2 * scale, 0, 0],
    },
    right(etch ? mlText(etch.ml) : ''),
    small(clock(row.longestGapSeconds)),
    ...(clocked
      ? [right(stays), right(clock(liftAt))]
      : [
          small(
            contact
              ? [contact.low, contact.wanted, contact.high]
                  .map((seconds) => (seconds === null ? '–' : minutesSeconds(seconds)))
                  .join(' · ')
              : '',
          ),
        ]),
  ];
}

/** The hatch of the map, its unit the millimetre. */
function swatch(strength: BenchLine['row']['strength']): string {
  const [width, height] = [14, 7];
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="-0.3 -0.3 ${width + 0.6} ${height + 0.6}">` +
    `${hatchSwatchSvg(strength, 0, 0, width, height, 0.55)}</svg>`
  );
}
