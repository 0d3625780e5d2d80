import { encodeJpeg, encodePng } from '../../imaging/codecs/encodePicture.ts';
import type { ChangeMaps } from '../../imaging/maps/changeMaps.ts';
import { sampleLinear } from '../../imaging/operations/sampleLinear.ts';
import type { Photograph } from '../../imaging/photograph.ts';
import type { PlaneMap } from '../../imaging/planeMap.ts';
import type { ColourRaster, Frame, Mask } from '../../imaging/raster.ts';
import { hatchMarksAt } from '../../paper/charts/hatching.ts';
import { linearToSrgb } from '../../science/colour/srgbTransfer.ts';
import type { Point } from '../../science/geometry/point.ts';

/** Pictures of the work rectangle are made at this many px to the millimetre, less where that would be too large. */
const picturePxPerMm = 4;
const longestPx = 2000;
/** Of a JPEG, 1..100. */
const pictureQuality = 86;

/** sRGB code of linear light in steps of 1/4095: quick, and exact to a code. */
const codeOf = Uint8Array.from({ length: 4096 }, (_, i) => Math.round(255 * linearToSrgb(i / 4095)));

interface RgbPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly codes: Uint8Array;
}

/** One object's photograph, and how to straighten it. */
export interface PicturedSide {
  readonly photo: Photograph;
  readonly map: PlaneMap;
  /** The photograph already sampled in the stone's frame in its own light; null: not yet. */
  readonly raster: ColourRaster | null;
}

/** Stone and print straightened to the work rectangle as it lies on the stone, and the print with its changes hatched. */
export async function comparisonPictures(
  sides: { readonly stone: PicturedSide; readonly proof: PicturedSide },
  changes: ChangeMaps | null,
  sizeMm: Point,
): Promise<Map<string, Uint8Array>> {
  const frame = pictureFrame(sizeMm);
  // Each is handed to a coding thread as soon as it is there, so that they are coded side by side.
  const coding: Promise<[string, Uint8Array]>[] = [];
  const code = (name: string, bytes: Promise<Uint8Array>) => {
    coding.push(bytes.then((done) => [name, done]));
  };
  const stone = straightened(sides.stone, frame);
  code('stone.jpg', encodeJpeg({ ...stone, channels: 3 }, pictureQuality));
  const proof = straightened(sides.proof, frame);
  code('proof.jpg', encodeJpeg({ ...proof, channels: 3 }, pictureQuality));
  if (changes) {
    for (const name of ['lost', 'filled', 'scum'] as const) {
      const { widthPx, heightPx, data } = changes[name];
      code(`${name}.png`, encodePng({ widthPx, heightPx, channels: 1, codes: data }));
    }
    code('overlay.png', encodePng({ ...hatched(proof, frame, changes), channels: 3 }));
  }
  return new Map(await Promise.all(coding));
}

/** One object straightened to the work rectangle as it lies on the stone, a JPEG. */
export function straightenedPicture(side: PicturedSide, sizeMm: Point): Promise<Uint8Array> {
  return encodeJpeg({ ...straightened(side, pictureFrame(sizeMm)), channels: 3 }, pictureQuality);
}

function pictureFrame([widthMm, heightMm]: Point): Frame {
  const pxPerMm = Math.min(picturePxPerMm, longestPx / Math.max(widthMm, heightMm));
  return {
    widthPx: Math.round(widthMm * pxPerMm),
    heightPx: Math.round(heightMm * pxPerMm),
    pxPerMm,
    originMm: [0, 0],
  };
}

/** Off the photograph it is middle grey. */
function straightened({ photo, map, raster }: PicturedSide, frame: Frame): RgbPicture {
  const known = raster !== null && raster.pxPerMm === frame.pxPerMm;
  const source = known ? raster : sampleLinear(photo, map, frame);
  const left = Math.round((frame.originMm[0] - source.originMm[0]) * frame.pxPerMm);
  const top = Math.round((frame.originMm[1] - source.originMm[1]) * frame.pxPerMm);
  const codes = new Uint8Array(frame.widthPx * frame.heightPx * 3);
  for (const [channel, plane] of source.planes.entries()) {
    for (let y = 0, at = channel; y < frame.heightPx; y++) {
      const row = (top + y) * source.widthPx + left;
      for (let x = 0; x < frame.widthPx; x++, at += 3) {
        const linear = plane[row + x]!;
        codes[at] = Number.isNaN(linear)
          ? 128
          : codeOf[Math.min(4095, Math.max(0, Math.round(linear * 4095)))]!;
      }
    }
  }
  return { widthPx: frame.widthPx, heightPx: frame.heightPx, codes };
}

/** The ink of charts and legends, which a photocopy keeps. */
const hatchInk = [0x1a, 0x17, 0x14] as const;
/** Hatch units over the longer side: on a page the marks come out as large as those of the legend, whatever the stone. */
const unitsAcross = 480;

/** The print paled, with what changed hatched over it by the signs of the legend, and outlined. */
function hatched(print: RgbPicture, frame: Frame, changes: ChangeMaps): RgbPicture {
  const codes = print.codes.map((code) => 255 - Math.round((255 - code) * 0.55));
  const unitsPerPx = unitsAcross / Math.max(frame.widthPx, frame.heightPx);
  const rimMm = 1 / unitsPerPx / frame.pxPerMm;
  for (let y = 0, i = 0; y < frame.heightPx; y++) {
    const yMm = (y + 0.5) / frame.pxPerMm;
    for (let x = 0; x < frame.widthPx; x++, i++) {
      const xMm = (x + 0.5) / frame.pxPerMm;
      for (const kind of ['lost', 'filled', 'scum'] as const) {
        const mask = changes[kind];
        if (!at(mask, xMm, yMm)) continue;
        const marked = hatchMarksAt(kind, (x + 0.5) * unitsPerPx, (y + 0.5) * unitsPerPx);
        if (marked || isRim(mask, xMm, yMm, rimMm)) codes.set(hatchInk, 3 * i);
      }
    }
  }
  return { ...print, codes };
}

/** Whether a place inside a mask is within `rimMm` of its outline, looked for along both axes. */
function isRim(mask: Mask, xMm: number, yMm: number, rimMm: number): boolean {
  return (
    !at(mask, xMm - rimMm, yMm) ||
    !at(mask, xMm + rimMm, yMm) ||
    !at(mask, xMm, yMm - rimMm) ||
    !at(mask, xMm, yMm + rimMm)
  );
}

function at(mask: Mask, xMm: number, yMm: number): boolean {
  const x = Math.floor(xMm * mask.pxPerMm);
  const y = Math.floor(yMm * mask.pxPerMm);
  return x >= 0 && y >= 0 && x < mask.widthPx && y < mask.heightPx && mask.data[y * mask.widthPx + x]! > 0;
}
