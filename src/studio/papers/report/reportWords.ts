import type { ReportPiece } from '../../../records/report.ts';
import type { ReportFigure, ReportRun } from '../../../records/setReport.ts';
import { isoDayWords } from '../../../science/calendar/dateWords.ts';
import { notRecorded } from '../paperWords.ts';
import { paragraphsOf } from './figurePieces.ts';

/** Over the list of what each figure was filled from. */
export const figureSources = 'Where each figure comes from';

/** Over the list of what nobody recorded. */
export const gapsLead = 'What a reader may ask for and nobody wrote down. Nothing was put in its place.';

/** Under a report that is read on a screen or worked on further: when its figures were filled, and what a range means. */
export function filledFrom(setAt: string): string {
  return `Figures were filled from the studio’s records on ${isoDayWords(setAt)}; within every range given lies the truth, 19 times of 20.`;
}

/** That words name figures which no record gives. */
export function missingFigures(names: readonly string[]): string {
  return names.length === 1
    ? `The words name a figure that is not there: ${names[0]}.`
    : `The words name figures that are not there: ${names.join(', ')}.`;
}

/** A figure as it stands in a line, with its unit and, where it is an amount, its ±. */
export function figureText({
  value,
  unit,
  plusMinus,
}: Pick<ReportFigure, 'value' | 'unit' | 'plusMinus'>): string {
  if (value === null) return notRecorded;
  if (unit === '' || (value === 0 && plusMinus === 0))
    return unit === '' ? String(value) : `${value} ${unit}`;
  return plusMinus === null ? `${value} ${unit}, ± unknown` : `${value} ${unit} ± ${plusMinus}`;
}

/**
 * Words with their figures put in. A name that stands for no figure is told in `unknown`, and in its place that a figure is
 * missing. An empty line parts paragraphs.
 */
export function wordsWithFigures(
  pieces: readonly ReportPiece[],
  figures: readonly ReportFigure[],
): { readonly paragraphs: readonly (readonly ReportRun[])[]; readonly unknown: readonly string[] } {
  const unknown: string[] = [];
  const paragraphs = paragraphsOf(pieces).map((paragraph) => paragraph.map(runOf));
  return { paragraphs, unknown };

  function runOf(piece: ReportPiece): ReportRun {
    if (typeof piece === 'string') return { text: piece, figure: null };
    const figure = figureNamed(figures, piece.figure);
    if (figure) return { text: figureText(figure), figure: figure.name };
    unknown.push(piece.figure);
    return { text: `(figure missing: ${piece.figure})`, figure: null };
  }
}

/** The figure of a name, whatever its capitals; or undefined. */
export function figureNamed<F extends Pick<ReportFigure, 'name'>>(
  figures: readonly F[],
  name: string,
): F | undefined {
  return figures.find((one) => one.name.toLowerCase() === name.toLowerCase());
}
