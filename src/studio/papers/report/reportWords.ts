import type { ReportFigure, ReportRun } from '../../../records/setReport.ts';
import { notRecorded } from '../paperWords.ts';

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
 * Words with their figures put in: `{pulls}` becomes the figure of that name. A name that stands for none is left as it
 * was typed and told in `unknown`. An empty line parts paragraphs.
 */
export function wordsWithFigures(
  typed: string,
  figures: readonly ReportFigure[],
): { readonly paragraphs: readonly (readonly ReportRun[])[]; readonly unknown: readonly string[] } {
  const unknown: string[] = [];
  const paragraphs = typed
    .split(/\n\s*\n/)
    .map((text) => text.trim())
    .filter((text) => text !== '')
    .map((text) => runsOf(text));
  return { paragraphs, unknown };

  function runsOf(text: string): readonly ReportRun[] {
    return text
      .split(/(\{[^{}]*\})/)
      .filter((part) => part !== '')
      .map((part): ReportRun => {
        const name = /^\{([^{}]*)\}$/.exec(part)?.[1]?.trim().toLowerCase();
        if (name === undefined) return { text: part, figure: null };
        const figure = figures.find((one) => one.name.toLowerCase() === name);
        if (figure) return { text: figureText(figure), figure: figure.name };
        unknown.push(name);
        return { text: part, figure: null };
      });
  }
}
