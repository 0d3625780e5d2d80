import { figureText } from './figures.ts';
import { areaIn, inchUnitOf, lengthFigure, smallAreaWords } from './lengths.ts';
import { wordsInUse } from './wordsInUse.ts';

const number = String.raw`(?<![\d.,:/\p{L}])\d+(?:[.,]\d+)?`;
const lengths = new RegExp(`(${number})(?: × (${number}))? (mm|cm)(?![\\p{L}\\p{N}²³/])`, 'gu');
const areas = new RegExp(`(${number}) (mm²|cm²)(?![\\p{L}/])`, 'gu');

/** The lengths and areas in a text in the units, then all its numbers with the comma or point, of the device that asks. */
export function figuresInWords(text: string): string {
  const measured = lengthsInWords(text);
  return wordsInUse().language === 'en'
    ? measured
    : measured.replace(/(?<![\d.,\p{L}])\d+\.\d+(?!\.?\d)/gu, figureText);
}

/** The lengths and areas in a text in the units of the device that asks. */
export function lengthsInWords(text: string): string {
  return wordsInUse().units === 'inch'
    ? text.replace(lengths, inInches).replace(areas, inSquareInches)
    : text;
}

/** Inches say as much as the millimetres did: two more decimals. */
function inInches(_: string, first: string, second: string | undefined, unit: string): string {
  const figures = [first, ...(second === undefined ? [] : [second])].map((figure) =>
    lengthFigure(numberOf(figure) * (unit === 'cm' ? 10 : 1), /[.,](\d+)/.exec(figure)?.[1]?.length ?? 0),
  );
  return `${figures.join(' × ')} ${inchUnitOf('mm')!.unit}`;
}

function inSquareInches(_: string, figure: string, unit: string): string {
  return unit === 'mm²'
    ? smallAreaWords(numberOf(figure))
    : areaIn(numberOf(figure), (area) => figureText(Number(area.toPrecision(3))));
}

/** With the point, or with the comma where the words around it were told in another language already. */
function numberOf(figure: string): number {
  return Number(figure.replace(',', '.'));
}
