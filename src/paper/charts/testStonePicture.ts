import type { Change } from '../../records/comparison.ts';
import type { Hold, PatchFinding } from '../../records/patchReading.ts';
import type { Point } from '../../science/geometry/point.ts';
import { asWritten } from '../../words/asWritten.ts';
import { chartFont, chartInk, fitText, svgText } from './chartInk.ts';
import { hatchedRectangleSvg } from './hatching.ts';
import { patchMark } from './patchMark.ts';

/** What a patch came to, as the hatches of all comparisons show it, and its letter. */
const marks: Readonly<Record<Hold, { readonly change: Change; readonly letter: string }>> = {
  held: { change: 'held', letter: 'H' },
  weak: { change: 'lighter', letter: 'W' },
  lost: { change: 'lost', letter: 'L' },
  filled: { change: 'filled', letter: 'F' },
};

/**
 * A test stone from above with what became of every patch, by hatch and letter: H held, W weak, L lost, F filled, ? not read;
 * guide lines and stop-outs are outlined only.
 * @param name unlike that of any other picture on the page. @param sizeMm the rectangle that the patches lie in.
 */
export function testStonePictureSvg(
  name: string,
  sizeMm: Point,
  findings: readonly PatchFinding[],
  widthPt: number,
): string {
  const scale = widthPt / sizeMm[0];
  const height = sizeMm[1] * scale;
  const patches = findings.map((finding, index) => patchSvg(finding, scale, `${name}-${index}`));
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${round(widthPt)}" height="${round(height)}" viewBox="0 0 ${round(widthPt)} ${round(height)}" ${chartFont}>` +
    `<rect x="0.5" y="0.5" width="${round(widthPt - 1)}" height="${round(height - 1)}" fill="#ffffff" stroke="${chartInk.ink}"/>` +
    `${patches.join('')}</svg>`
  );
}

function patchSvg(
  { patch, row, column, polygonMm, hold, intention }: PatchFinding,
  scale: number,
  id: string,
): string {
  const xs = polygonMm.map(([x]) => x * scale);
  const ys = polygonMm.map(([, y]) => y * scale);
  const box = {
    x: round(Math.min(...xs)),
    y: round(Math.min(...ys)),
    width: round(Math.max(...xs) - Math.min(...xs)),
    height: round(Math.max(...ys) - Math.min(...ys)),
  };
  const shape = `x="${box.x}" y="${box.y}" width="${box.width}" height="${box.height}"`;
  const size = Math.min(11, box.height * 0.5);
  const codeSize = Math.min(7, box.height * 0.32);
  const code =
    markSvg({ id: patch, row, column }, box, codeSize) ??
    `<text x="${round(box.x + box.width / 2)}" y="${round(box.y + box.height + codeSize + 0.5)}" font-size="${round(codeSize)}" text-anchor="middle" fill="${chartInk.soft}">${svgText(asWritten(fitText(patch, box.width * 1.4, codeSize)))}</text>`;
  if (intention === 'guide' || intention === 'stop-out')
    return `<rect ${shape} fill="none" stroke="${chartInk.rule}" stroke-dasharray="2 2"/>${code}`;
  const { change, letter } = hold === null ? { change: 'undecided' as const, letter: '?' } : marks[hold];
  const middle = { x: round(box.x + box.width / 2), y: round(box.y + box.height / 2) };
  return (
    `${hatchedRectangleSvg(change, box, chartInk.ink, id)}` +
    `<circle cx="${middle.x}" cy="${middle.y}" r="${round(size * 0.75)}" fill="#ffffff"/>` +
    `<text x="${middle.x}" y="${round(middle.y + size * 0.36)}" font-size="${round(size)}" font-weight="700" text-anchor="middle" fill="${chartInk.ink}">${letter}</text>${code}`
  );
}

/** The mark of a patch that stands in a row, just under it; null: it goes by a name. */
function markSvg(
  patch: Parameters<typeof patchMark>[0],
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  size: number,
): string | null {
  const mark = patchMark(patch);
  if (!mark) return null;
  const scale = Math.min(size / mark.height, (box.width * 1.2) / mark.width);
  const left = box.x + (box.width - mark.width * scale) / 2;
  return `<path transform="translate(${round(left)} ${round(box.y + box.height + 0.6)}) scale(${round(scale)})" d="${mark.path}" fill="none" stroke="${chartInk.soft}" stroke-width="1.6" stroke-linecap="round"/>`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
