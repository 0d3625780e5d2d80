import { describe, expect, it } from 'vitest';
import { decodePhotograph } from '../../imaging/codecs/decodePhotograph.ts';
import type { Point } from '../../science/geometry/point.ts';
import { type Drawing, rectangleMm } from './drawing.ts';
import { encodePicture } from './encodePicture.ts';
import { storedTurned } from './exifTurn.ts';
import { type PairCase, plainCase } from './pairCase.ts';
import { faithfulTransfer } from './printing.ts';
import { renderPair } from './renderPair.ts';
import { plainSensor } from './sensor.ts';
import type { RenderedPicture } from './takePhotograph.ts';

/** 80 × 60 mm: a crayon field, a solid, and bare stone. */
const drawing: Drawing = {
  name: 'small',
  sizeMm: [80, 60],
  marks: [
    {
      kind: 'area',
      zoneId: 'field',
      texture: 'crayon',
      polygonMm: rectangleMm(6, 6, 30, 30),
      tone: () => 0.4,
    },
    { kind: 'area', zoneId: 'solid', texture: 'full', polygonMm: rectangleMm(44, 6, 30, 30), tone: () => 1 },
  ],
  zones: [
    { id: 'field', name: 'field', medium: 'crayon', polygonMm: rectangleMm(6, 6, 30, 30) },
    { id: 'solid', name: 'solid', medium: 'solid', polygonMm: rectangleMm(44, 6, 30, 30) },
    { id: 'bare', name: 'bare', medium: 'blank', polygonMm: rectangleMm(6, 42, 68, 12) },
  ],
  stopOuts: [],
};

/** No noise and even light, so that reflectance can be read straight off the picture. */
const still = {
  ...plainSensor,
  lightSlope: [0, 0] as const,
  falloff: 0,
  flare: 0,
  shotNoise: 0,
  readNoise: 0,
  exposure: 1,
  bits: 16 as const,
};

function smallCase(changes: Partial<PairCase> = {}): PairCase {
  const base = plainCase('small', 7, drawing);
  return {
    ...base,
    megapixels: 0.6,
    transfer: { ...faithfulTransfer, gain: 0.05 },
    stone: { ...base.stone, sensor: still },
    print: { ...base.print, sensor: still },
    files: { kind: 'tiff16', quality: 100, exifOrientation: 1 },
    ...changes,
  };
}

/** Mean green light of the picture over a rectangle of stone mm, through the truth's own correspondence. */
function meanLight(picture: RenderedPicture, toPx: (mm: Point) => Point, box: readonly Point[]): number {
  let sum = 0;
  let count = 0;
  for (let y = box[0]![1] + 1; y < box[2]![1] - 1; y += 0.17)
    for (let x = box[0]![0] + 1; x < box[2]![0] - 1; x += 0.17) {
      const [px, py] = toPx([x, y]);
      const code = picture.codes[(Math.floor(py) * picture.widthPx + Math.floor(px)) * 3 + 1]! / 65535;
      sum += code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
      count++;
    }
  return sum / count;
}

/** Bilinear through the truth grid, which over 80 mm bends by far less than a pixel between nodes. */
function gridMap(rendered: ReturnType<typeof renderPair>, plane: 'stonePx' | 'proofPx') {
  const { grid } = rendered.truth;
  const count = Math.sqrt(grid.length);
  return ([x, y]: Point): Point => {
    const u = (x / 80) * (count - 1);
    const v = (y / 60) * (count - 1);
    const node = (i: number, j: number) => grid[(Math.floor(v) + j) * count + Math.floor(u) + i]![plane];
    const mix = (axis: 0 | 1) =>
      (node(0, 0)[axis] * (1 - (u % 1)) + node(1, 0)[axis] * (u % 1)) * (1 - (v % 1)) +
      (node(0, 1)[axis] * (1 - (u % 1)) + node(1, 1)[axis] * (u % 1)) * (v % 1);
    return [mix(0), mix(1)];
  };
}

describe('a rendered pair', () => {
  const rendered = renderPair(smallCase());

  it.each([
    ['stone', 'stonePx', 'drawn'],
    ['print', 'proofPx', 'printed'],
  ] as const)('shows on the %s the coverage that its truth states', (name, plane, which) => {
    const picture = rendered.take(name);
    const toPx = gridMap(rendered, plane);
    const light = (zone: number) => meanLight(picture, toPx, drawing.zones[zone]!.polygonMm);
    const ground = light(2);
    const ink = rendered.truth.zones[1]![which]!;
    const solidLight = light(1);
    // R = ground (1 − c) + ink c: the crayon field between bare ground and the solid's own truth.
    const coverage = ((ground - light(0)) / (ground - solidLight)) * ink;
    // Ground mottle of 1.5 % leaves about 0.01 between places.
    expect(Math.abs(coverage - rendered.truth.zones[0]![which]!)).toBeLessThan(0.01);
  });

  it('has the tones asked for, and gain on the print', () => {
    const [field, solid, bare] = rendered.truth.zones;
    expect(field!.drawn).toBeGreaterThan(0.38);
    expect(field!.drawn).toBeLessThan(0.42);
    expect(field!.printed! - field!.drawn).toBeGreaterThan(0.03);
    expect(solid!.drawn).toBe(1);
    expect(bare!).toMatchObject({ drawn: 0, printed: 0, visible: 1, change: 'held' });
  });

  it('prints the mirror image, unless asked not to', () => {
    const order = (pair: ReturnType<typeof renderPair>) => {
      const [left, right] = [pair.truth.grid[0]!, pair.truth.grid[32]!];
      return Math.sign(right.proofPx[0] - left.proofPx[0]);
    };
    expect(order(rendered)).toBe(-1);
    expect(order(renderPair(smallCase({ mirrored: false })))).toBe(1);
  });

  it('gives the same pixels again, and others with another seed', () => {
    const bytes = (pair: ReturnType<typeof renderPair>) => Buffer.from(pair.take('print').codes.buffer);
    const first = bytes(rendered);
    expect(bytes(renderPair(smallCase())).equals(first)).toBe(true);
    expect(bytes(renderPair(smallCase({ seed: 8 }))).equals(first)).toBe(false);
  });

  it('knows what the sheet missed', () => {
    const missed = renderPair(smallCase({ sheetMarginsMm: [20, 20, -41, 20] }));
    const [field, solid] = missed.truth.zones;
    // Mirrored: the sheet's right half lies on the stone's left.
    expect(field).toMatchObject({ printed: null, visible: 0 });
    expect(solid!.visible).toBeGreaterThan(0.95);
    expect(missed.truth.grid.filter(({ onSheet }) => onSheet).length / missed.truth.grid.length).toBeCloseTo(
      0.5,
      1,
    );
  });
});

describe('lost, closed and scummed patches', () => {
  it('are sure in the middle and nowhere else', () => {
    const { truth, maps } = renderPair(
      smallCase({
        damage: {
          patches: [
            { kind: 'lost', centreMm: [14, 20], radiiMm: [5, 8], amount: 1 },
            { kind: 'closed', centreMm: [28, 20], radiiMm: [5, 8], amount: 1 },
            { kind: 'scum', centreMm: [40, 48], radiiMm: [9, 5], amount: 0.1 },
          ],
          edgeScum: null,
          uniformScum: 0,
        },
      }),
    );
    const at = (plane: Uint8Array, [x, y]: Point) =>
      plane[Math.floor(y * 2) * maps.columns + Math.floor(x * 2)];
    expect([at(maps.lost, [14, 20]), at(maps.lost, [28, 20]), at(maps.lost, [60, 20])]).toEqual([255, 0, 0]);
    expect([at(maps.filled, [14, 20]), at(maps.filled, [28, 20]), at(maps.filled, [60, 20])]).toEqual([
      0, 255, 0,
    ]);
    expect([at(maps.scum, [40, 48]), at(maps.scum, [12, 48])]).toEqual([255, 0]);
    expect(truth.areas.lost.sure).toBeGreaterThan(0.015);
  });
});

describe('files', () => {
  it.each([3, 6, 8] as const)('turned with EXIF tag %i are read upright', async (exifOrientation) => {
    const picture: RenderedPicture = {
      widthPx: 32,
      heightPx: 24,
      bits: 8,
      codes: Uint8Array.from({ length: 32 * 24 * 3 }, (_, i) =>
        Math.floor(i / 3) % 32 < 16 && i < 12 * 96 ? 250 : 10,
      ),
    };
    const bytes = await encodePicture(picture, { kind: 'jpeg', quality: 95, exifOrientation });
    const decoded = await decodePhotograph(bytes, 'turned.jpg');
    if (!decoded.ok) throw new Error(decoded.error.message);
    const { widthPx, heightPx, codes } = decoded.value;
    expect([widthPx, heightPx]).toEqual([32, 24]);
    // Light in the upper left quarter alone.
    const light = (x: number, y: number) => codes[(y * 32 + x) * 3]! > 128;
    expect([light(4, 4), light(28, 4), light(4, 20), light(28, 20)]).toEqual([true, false, false, false]);
    expect(storedTurned(picture, 1)).toBe(picture);
  });

  it('keep 16 bits code for code', async () => {
    const picture = renderPair(smallCase({ megapixels: 0.05 })).take('stone');
    const bytes = await encodePicture(picture, { kind: 'png16', quality: 100, exifOrientation: 1 });
    const decoded = await decodePhotograph(bytes, 'deep.png');
    expect(decoded.ok && Array.from(decoded.value.codes)).toEqual(Array.from(picture.codes));
  });
});
