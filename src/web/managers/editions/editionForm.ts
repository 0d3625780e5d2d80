import type { Edition, EditionDraft, EditionPaper, SheetMm } from '../../../records/edition.ts';
import { say } from '../../words/say.ts';
import { numberText, numberTrouble, typedNumber } from '../typedNumber.ts';

/** The fields of an edition as typed. */
export type EditionTyped = Readonly<Record<EditionField, string>>;
export type EditionField = keyof typeof editionFieldWords;

/** What each field is called. */
export const editionFieldWords = {
  title: say('Title'),
  size: say('Numbered prints'),
  artistProofs: say('Artist’s proofs'),
  paperName: say('Paper'),
  gramsPerM2: say('Weight'),
  sheetWide: say('Sheet as bought, one side'),
  sheetHigh: say('Sheet, other side'),
  sheetGrain: say('Its fibres lie along'),
  pieceWide: say('Torn to, one side'),
  pieceHigh: say('Torn to, other side'),
  pieceGrain: say('Fibres wanted along'),
  tearLoss: say('Lost at every tear'),
  damped: say('Printed'),
  inkedCm2: say('Inked area'),
  rackPlaces: say('Places on the rack'),
  artist: say('Artist'),
  printer: say('Printed by'),
  ink: say('Ink'),
  press: say('Press'),
  drawingMaterials: say('Drawing materials'),
  etches: say('Etches'),
  approvalPull: say('The pull that was approved'),
  approvedBy: say('Approved by'),
  approvalLights: say('Approval proof: lights'),
  approvalMiddles: say('Approval proof: middles'),
  approvalDarks: say('Approval proof: darks'),
  chop: say('Chop'),
  signature: say('Signature and place'),
  signedOn: say('Signed on'),
  cancellation: say('How the image was cancelled'),
  cancelledOn: say('Cancelled on'),
  note: say('Remarks'),
} as const;

/** An edition as a person would type it. */
export function editionTyped(edition: Edition): EditionTyped {
  const { paper, approval } = edition;
  return {
    title: edition.title,
    size: String(edition.size),
    artistProofs: numberText(edition.artistProofs),
    paperName: paper.name,
    gramsPerM2: numberText(paper.gramsPerM2),
    sheetWide: numberText(paper.sheetMm?.[0] ?? null),
    sheetHigh: numberText(paper.sheetMm?.[1] ?? null),
    sheetGrain: paper.sheetGrain,
    pieceWide: numberText(paper.pieceMm?.[0] ?? null),
    pieceHigh: numberText(paper.pieceMm?.[1] ?? null),
    pieceGrain: paper.pieceGrain,
    tearLoss: numberText(paper.tearLossMm),
    damped: paper.damped,
    inkedCm2: numberText(edition.inkedCm2),
    rackPlaces: numberText(edition.rackPlaces),
    artist: edition.artist,
    printer: edition.printer,
    ink: edition.ink,
    press: edition.press,
    drawingMaterials: edition.drawingMaterials,
    etches: edition.etches,
    approvalPull: edition.approvalPullId ?? '',
    approvedBy: edition.approvedBy,
    approvalLights: numberText(approval.lights),
    approvalMiddles: numberText(approval.middles),
    approvalDarks: numberText(approval.darks),
    chop: edition.chop,
    signature: edition.signature,
    signedOn: edition.signedOn ?? '',
    cancellation: edition.cancellation,
    cancelledOn: edition.cancelledOn ?? '',
    note: edition.note,
  };
}

/** What is wrong with what was typed, by field; bounds are those of the server. */
export function editionTroubles(typed: EditionTyped): Partial<Record<EditionField, string | null>> {
  const pair = (one: string, other: string) =>
    (one.trim() === '') === (other.trim() === '') ? null : say('Both sides, or neither.');
  const sides = (one: 'sheetWide' | 'pieceWide', other: 'sheetHigh' | 'pieceHigh') => ({
    [one]: numberTrouble(typed[one], 1, 5000, { unit: 'mm' }) ?? pair(typed[one], typed[other]),
    [other]: numberTrouble(typed[other], 1, 5000, { unit: 'mm' }),
  });
  const tone = (text: string) => numberTrouble(text, -0.2, 1.2);
  return {
    title: typed.title.trim() === '' ? say('A title is needed.') : null,
    size: numberTrouble(typed.size, 1, 1000, { needed: true, whole: true }),
    artistProofs: numberTrouble(typed.artistProofs, 0, 200, { whole: true }),
    gramsPerM2: numberTrouble(typed.gramsPerM2, 1, 2000),
    ...sides('sheetWide', 'sheetHigh'),
    ...sides('pieceWide', 'pieceHigh'),
    tearLoss: numberTrouble(typed.tearLoss, 0, 100, { unit: 'mm' }),
    inkedCm2: numberTrouble(typed.inkedCm2, 0.1, 1e6, { unit: 'cm²' }),
    rackPlaces: numberTrouble(typed.rackPlaces, 0, 10_000, { whole: true }),
    approvalLights: tone(typed.approvalLights),
    approvalMiddles: tone(typed.approvalMiddles),
    approvalDarks: tone(typed.approvalDarks),
  };
}

/** What was typed, as the server takes it; only for what has no trouble. */
export function editionOfTyped(typed: EditionTyped): Partial<EditionDraft> {
  const day = (text: string) => (text === '' ? null : text);
  const size = (one: string, other: string): SheetMm | null => {
    const [wide, high] = [typedNumber(one), typedNumber(other)];
    return wide === null || high === null ? null : [wide, high];
  };
  return {
    title: typed.title.trim(),
    size: typedNumber(typed.size)!,
    artistProofs: typedNumber(typed.artistProofs),
    paper: {
      name: typed.paperName.trim(),
      gramsPerM2: typedNumber(typed.gramsPerM2),
      sheetMm: size(typed.sheetWide, typed.sheetHigh),
      sheetGrain: typed.sheetGrain as EditionPaper['sheetGrain'],
      pieceMm: size(typed.pieceWide, typed.pieceHigh),
      pieceGrain: typed.pieceGrain as EditionPaper['pieceGrain'],
      damped: typed.damped as EditionPaper['damped'],
      tearLossMm: typedNumber(typed.tearLoss) ?? 0,
    },
    inkedCm2: typedNumber(typed.inkedCm2),
    rackPlaces: typedNumber(typed.rackPlaces),
    artist: typed.artist,
    printer: typed.printer,
    ink: typed.ink,
    press: typed.press,
    drawingMaterials: typed.drawingMaterials,
    etches: typed.etches,
    approvalPullId: typed.approvalPull === '' ? null : typed.approvalPull,
    approvedBy: typed.approvedBy,
    approval: {
      lights: typedNumber(typed.approvalLights),
      middles: typedNumber(typed.approvalMiddles),
      darks: typedNumber(typed.approvalDarks),
    },
    chop: typed.chop,
    signature: typed.signature,
    signedOn: day(typed.signedOn),
    cancellation: typed.cancellation,
    cancelledOn: day(typed.cancelledOn),
    note: typed.note,
  };
}
