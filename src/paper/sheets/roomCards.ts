import { upperFirst } from '../../foundation/upperFirst.ts';
import type { Material } from '../../records/material.ts';
import type { Paper } from '../../records/paper.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { hazardsTold, keptApart } from '../../studio/room/hazardWords.ts';
import { localRules } from '../../studio/room/localRules.ts';
import { asWritten } from '../../words/asWritten.ts';
import { fittedSheetPdf, type SheetContent } from './pdfDocument.ts';

/** What hangs at the door: what is in the room. */
export interface DoorCardInput {
  readonly card: 'door';
  readonly materials: readonly Material[];
  readonly at: string;
  readonly paper: Paper;
}

/** What lies beside the stone: one stage. */
export interface StartCardInput {
  readonly card: 'start';
  /** The stage's name. */
  readonly stage: string;
  readonly cautions: readonly string[];
  readonly defer: string;
  /** Those that are used in it. */
  readonly materials: readonly Material[];
  readonly at: string;
  readonly paper: Paper;
}

export type RoomCardInput = DoorCardInput | StartCardInput;

const ink = '#1a1714';
/** What a blank stands as: a line to write on, never a guess. */
const blank = '______________________________';

/** A card to pin up, on one page as large as it fits. Equal input gives equal bytes. */
export function roomCardPdf(input: RoomCardInput): Promise<Uint8Array> {
  return input.card === 'door' ? doorCard(input) : startCard(input);
}

function doorCard({ materials, at, paper }: DoorCardInput): Promise<Uint8Array> {
  const apart = keptApart(materials);
  return fittedSheetPdf({
    title: 'What is in this room',
    createdAt: new Date(at),
    paper,
    foot: `As entered on ${isoDayWords(at)} from the safety data sheets. ${localRules.air}`,
    content: (scale, widthPt) => [
      ...head('At the door', 'What is in this room', scale),
      ...apart.map((words) => loud(`Keep apart: ${words}`, scale)),
      materials.length === 0
        ? loud('No material is entered: what is in this room is not known.', scale)
        : materialTable(materials, scale, widthPt),
      ...lines(
        [
          'In an emergency call',
          'Address to tell them',
          'Water for the eyes',
          'Fire extinguisher',
          'Who may be asked',
        ],
        scale,
      ),
    ],
  });
}

function startCard({ stage, cautions, defer, materials, at, paper }: StartCardInput): Promise<Uint8Array> {
  return fittedSheetPdf({
    title: `Before you start: ${stage}`,
    createdAt: new Date(at),
    paper,
    foot: defer,
    content: (scale, widthPt) => [
      ...head('Before you start', upperFirst(stage), scale),
      ...(cautions.length === 0 ? [loud('Nothing of its own is known to mind in this stage.', scale)] : []),
      ...cautions.map((words) => loud(words, scale)),
      ...(materials.length === 0
        ? [
            {
              text: 'No material is entered for this stage: read the safety data sheets of what you use.',
              fontSize: 11 * scale,
              margin: [0, 4 * scale, 0, 8 * scale] as [number, number, number, number],
            },
          ]
        : [materialTable(materials, scale, widthPt)]),
      ...boxes(
        ['Gloves and eye protection on', 'Air moving away from the face', 'Metal can for cloths'],
        scale,
      ),
      ...lines(['Who else is here'], scale),
    ],
  });
}

function head(stampText: string, name: string, scale: number): SheetContent[] {
  return [
    { text: stampText, bold: true, fontSize: 10 * scale },
    {
      text: name,
      font: 'ArchivoNarrow',
      bold: true,
      fontSize: 30 * scale,
      lineHeight: 1,
      margin: [0, 2 * scale, 0, 8 * scale],
    },
  ];
}

function loud(text: string, scale: number): SheetContent {
  return { text, bold: true, fontSize: 13 * scale, margin: [0, 0, 0, 6 * scale] };
}

function materialTable(materials: readonly Material[], scale: number, widthPt: number): SheetContent {
  const nameWidth = widthPt * 0.34;
  return {
    margin: [0, 4 * scale, 0, 10 * scale],
    table: {
      dontBreakRows: true,
      widths: [nameWidth, widthPt - nameWidth - 14 * scale],
      body: materials.map((material) => [nameCell(material, scale), detailCell(material, scale)]),
    },
    layout: {
      hLineWidth: (row) => (row === 0 ? 1.6 : 0.7),
      vLineWidth: () => 0,
      hLineColor: () => ink,
      paddingLeft: () => 0,
      paddingRight: () => 6 * scale,
      paddingTop: () => 4 * scale,
      paddingBottom: () => 6 * scale,
    },
  };
}

function nameCell(material: Material, scale: number): SheetContent {
  return {
    stack: [
      {
        text: asWritten(material.name),
        font: 'ArchivoNarrow',
        bold: true,
        fontSize: 16 * scale,
        lineHeight: 1,
      },
      { text: hazardsTold(material), bold: true, fontSize: 10 * scale },
    ],
  };
}

function detailCell(material: Material, scale: number): SheetContent {
  const { statements, flashPointC, limitMgPerM3, protection, firstAid, storage, waste, sheetPlace } =
    material;
  const told: readonly (readonly [string, string])[] = [
    ['On the sheet', statements],
    ['Flash point', flashPointC === null ? '' : `${flashPointC} °C`],
    ['Limit', limitMgPerM3 === null ? '' : `${limitMgPerM3} mg/m³`],
    ['Wear', protection],
    ['First aid', firstAid],
    ['Kept', storage],
    ['Waste', waste],
    ['The sheet lies', sheetPlace],
  ];
  return {
    stack: told.map(([name, words]) => ({
      text: [
        { text: `${name}: `, bold: true },
        words === '' ? blank : name === 'Flash point' || name === 'Limit' ? words : asWritten(words),
      ],
      fontSize: 9 * scale,
      margin: [0, 0, 0, 1.5 * scale] as [number, number, number, number],
    })),
  };
}

/** Things to tick before one starts. */
function boxes(names: readonly string[], scale: number): SheetContent[] {
  const side = 9 * scale;
  return names.map((name) => ({
    columns: [
      {
        canvas: [{ type: 'rect', x: 0, y: scale, w: side, h: side, lineWidth: 0.8, lineColor: ink }],
        width: 1.8 * side,
      },
      { text: name, bold: true, fontSize: 11 * scale },
    ],
    margin: [0, 3 * scale, 0, 3 * scale] as [number, number, number, number],
  }));
}

function lines(names: readonly string[], scale: number): SheetContent[] {
  return names.map((name) => ({
    text: [{ text: `${name}: `, bold: true }, blank],
    fontSize: 11 * scale,
    margin: [0, 3 * scale, 0, 3 * scale] as [number, number, number, number],
  }));
}
