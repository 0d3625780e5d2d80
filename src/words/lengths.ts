import { figureText } from './figures.ts';
import { wordsInUse } from './wordsInUse.ts';

/** Millimetres in one inch, exact by definition. */
const mmPerInch = 25.4;

/** Whether lengths and areas are shown and typed in inches. */
function inInches(): boolean {
  return wordsInUse().units === 'inch';
}

/** What is shown and typed in place of a unit where inches are chosen, and how many of the unit go into one. */
const inchUnits: Readonly<Record<string, { readonly unit: string; readonly per: number }>> = {
  mm: { unit: 'in', per: mmPerInch },
  cm: { unit: 'in', per: mmPerInch / 10 },
  'mm²': { unit: 'in²', per: mmPerInch ** 2 },
  'cm²': { unit: 'in²', per: (mmPerInch / 10) ** 2 },
};

/** A unit that stands for one of millimetres: null where it is shown and typed as it is. */
export function inchUnitOf(unit: string | undefined): { readonly unit: string; readonly per: number } | null {
  return (inInches() && unit !== undefined && inchUnits[unit]) || null;
}

/**
 * A length as shown: `300 mm`, or `11.81 in`.
 * @param decimals of the millimetres at most; inches get two more, so that nothing that was seen is lost.
 */
export function lengthWords(mm: number, decimals = 0): string {
  return `${lengthFigure(mm, decimals)} ${inInches() ? 'in' : 'mm'}`;
}

/** The figure of `lengthWords` alone. */
export function lengthFigure(mm: number, decimals = 0): string {
  return figureText(inInches() ? trimmed(mm / mmPerInch, decimals + 2) : trimmed(mm, decimals));
}

/** The sides of a rectangle: `300 × 400 mm`, or `11.81 × 15.75 in`. */
export function sizeWords(widthMm: number, heightMm: number): string {
  // What was kept to a tenth is shown to a tenth.
  return `${lengthFigure(widthMm, 1)} × ${lengthWords(heightMm, 1)}`;
}

/** An area in square centimetres as shown, its figure written by `write`: `1,200 cm²`, or `186 in²`. */
export function areaIn(cm2: number, write: (figure: number) => string): string {
  return inInches() ? `${write(cm2 / inchUnits['cm²']!.per)} in²` : `${write(cm2)} cm²`;
}

/** A small area in square millimetres as shown: `12 mm²`, or `0.019 in²`. */
export function smallAreaWords(mm2: number): string {
  const inch = inchUnitOf('mm²');
  return inch
    ? `${figureText(Number((mm2 / inch.per).toPrecision(2)))} ${inch.unit}`
    : `${figureText(mm2)} mm²`;
}

/**
 * A kept number as it is typed in inches: as few decimals as bring back the very same number by `fromInchText`.
 * @param value in the unit that is kept; finite, with up to six decimals.
 */
export function inchText(value: number, per: number): string {
  for (let decimals = 0; decimals <= 12; decimals++) {
    // Noughts stay behind more than four decimals: they say that more than a hundredth was meant.
    const text = decimals <= 4 ? trimmed(value / per, decimals) : (value / per).toFixed(decimals);
    if (fromInchText(text, per) === value) return figureText(text);
  }
  return figureText((value / per).toFixed(12));
}

/**
 * What is typed in inches (`11.81`, `11,81`, `11 13/16`, `3/8`) in the unit that is kept. Up to four decimals mean a
 * hundredth of that unit at best; whoever types more means more.
 * @returns NaN where it is no number.
 */
export function fromInchText(text: string, per: number): number {
  const found = /^([-+]?)(?:(\d+)[\s-]+)?(\d+)\/(\d+)$|^[-+]?(?:\d+[.,]?\d*|[.,]\d+)$/.exec(text.trim());
  if (!found) return Number.NaN;
  const [whole, sign, before, above, below] = found;
  if (above !== undefined) {
    const inches = Number(before ?? 0) + Number(above) / Number(below);
    return rounded((sign === '-' ? -inches : inches) * per, 2);
  }
  const decimals = /[.,](\d*)/.exec(whole)?.[1]?.length ?? 0;
  return rounded(Number(whole.replace(',', '.')) * per, decimals <= 4 ? 2 : 6);
}

function rounded(value: number, decimals: number): number {
  return Number.isFinite(value) ? Number(value.toFixed(decimals)) : Number.NaN;
}

function trimmed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  // Not by way of a number: a small one would be written with an exponent.
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}
