import { type HatchStep, hatchScale } from '../../records/hatchScale.ts';

/** Height of a step with the bare paper under it, and size of its hatching, mm. */
const stepMm = { height: 15, hatched: 13.5, width: 52 } as const;
/** Lines and gaps thinner than this fill in or break on an office printer. Our rule. */
const thinnestMm = 0.12;
/** Lines closer than this melt into a tone at arm's length. Our rule. */
const closestMm = 0.8;
const letterMm = 23;

/** The whole strip, mm. */
export const stripSizeMm = {
  width: letterMm + stepMm.width,
  height: stepMm.height * hatchScale.length,
} as const;

/**
 * The hatch scale as a strip true to size: a letter and the stated coverage beside each step, the hatching running to the
 * right edge, so that it can be cut there and laid on a print. Every step holds a whole number of lines: it covers exactly
 * what it says.
 */
export function hatchScaleStripSvg(ink: string): string {
  const { width, height } = stripSizeMm;
  const steps = hatchScale.map((step, index) => stepMarks(step, index * stepMm.height, ink));
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">` +
    `${steps.join('')}</svg>`
  );
}

function stepMarks({ letter, coverage }: HatchStep, top: number, ink: string): string {
  const middle = top + stepMm.hatched / 2;
  const percent = `${Math.round(coverage * 100)} %`;
  const lines = linesOf(coverage).map(
    ([y, thick]) =>
      `<rect x="${letterMm}" y="${at(top + y)}" width="${stepMm.width}" height="${at(thick)}" fill="${ink}"/>`,
  );
  return (
    `<text x="0" y="${at(middle + 2.4)}" font-family="Archivo" font-weight="700" font-size="7" fill="${ink}">${letter}</text>` +
    `<text x="8" y="${at(middle + 1.4)}" font-family="Archivo" font-size="4" fill="${ink}">${percent}</text>` +
    lines.join('') +
    `<rect x="${letterMm}" y="${at(top)}" width="${stepMm.width}" height="${stepMm.hatched}" fill="none" stroke="${ink}" stroke-width="0.1"/>`
  );
}

/** Top and thickness of each line of a step, mm. */
function linesOf(coverage: number): readonly (readonly [number, number])[] {
  if (coverage <= 0) return [];
  if (coverage >= 1) return [[0, stepMm.hatched]];
  const wanted = Math.max(closestMm, thinnestMm / Math.min(coverage, 1 - coverage));
  const count = Math.max(1, Math.floor(stepMm.hatched / wanted));
  const spacing = stepMm.hatched / count;
  return Array.from({ length: count }, (_, i) => [
    (i + 0.5) * spacing - (coverage * spacing) / 2,
    coverage * spacing,
  ]);
}

function at(value: number): string {
  return String(Math.round(value * 10_000) / 10_000);
}
