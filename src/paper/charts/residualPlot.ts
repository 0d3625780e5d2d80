import { chartFont, chartInk, svgText } from './chartInk.ts';

/** One patch in a plot of what is left. */
interface PlotPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Points about the line of nothing left, with axes from least to most and their ends named.
 * @param points at least one; finite. @param guide a straight line y = slope · x to hold them against; null: y = 0.
 */
export function residualPlotSvg(
  points: readonly PlotPoint[],
  { xName, yName, slope }: { readonly xName: string; readonly yName: string; readonly slope: number | null },
  [width, height]: readonly [number, number],
): string {
  const [left, right, top, bottom] = [34, width - 6, 8, height - 24];
  const xs = points.map(({ x }) => x);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const reach = Math.max(1e-6, ...points.map(({ y }) => Math.abs(y))) * 1.1;
  const atX = (x: number) =>
    round(left + 4 + ((x - least) / Math.max(1e-9, most - least)) * (right - left - 8));
  const atY = (y: number) => round((top + bottom) / 2 - (y / reach) * ((bottom - top) / 2));
  const within = (y: number) => Math.min(reach, Math.max(-reach, y));
  const line = [least, most].map((x) => `${atX(x)} ${atY(within(slope === null ? 0 : slope * x))}`);
  const dots = points.map(
    ({ x, y }) =>
      `<circle cx="${atX(x)}" cy="${atY(y)}" r="2" fill="none" stroke="${chartInk.ink}" stroke-width="0.9"/>`,
  );
  const label = (x: number, y: number, text: string, anchor: string) =>
    `<text x="${round(x)}" y="${round(y)}" font-size="7.5" text-anchor="${anchor}" fill="${chartInk.soft}">${svgText(text)}</text>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" ${chartFont}>` +
    `<path d="M${left} ${top}V${bottom}H${right}" fill="none" stroke="${chartInk.rule}"/>` +
    `<path d="M${line.join('L')}" stroke="${chartInk.tannin}" stroke-width="1" fill="none"/>${dots.join('')}` +
    label(left - 3, atY(reach / 1.1) + 3, (reach / 1.1).toFixed(2), 'end') +
    label(left - 3, atY(0) + 3, '0', 'end') +
    label(left - 3, atY(-reach / 1.1) + 3, `−${(reach / 1.1).toFixed(2)}`, 'end') +
    label(left, height - 14, least.toFixed(2).replace('-', '−'), 'start') +
    label(right, height - 14, most.toFixed(2).replace('-', '−'), 'end') +
    label((left + right) / 2, height - 3, `${yName} on ${xName}`, 'middle') +
    '</svg>'
  );
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
