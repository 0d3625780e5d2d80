import type { Point } from '../../science/geometry/point.ts';
import { type Body, insideMm } from './body.ts';
import type { Camera } from './camera.ts';
import { type CoverageRaster, smoothedCoverage } from './coverageRaster.ts';
import { noiseAt } from './noise.ts';
import { codeTable, glareAt, normalTable, type SensorSettings } from './sensor.ts';
import { type TableTop, tableColour } from './tableTop.ts';

/** A grey chip of known reflectance beside the object; an upright rectangle in plane mm. */
export interface PlacedChip {
  readonly name: string;
  readonly reflectance: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface Scene {
  readonly body: Body;
  readonly coverage: CoverageRaster;
  /** Plane mm of the body to stone mm: the identity for a stone, the sheet's map for a print. */
  toStoneMm(planeMm: Point): Point;
  readonly table: TableTop;
  readonly chips: readonly PlacedChip[];
}

export interface RenderedPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bits: 8 | 16;
  /** Interleaved RGB, row by row, sRGB-coded. */
  readonly codes: Uint8Array | Uint16Array;
}

const blockPx = 8;
const codeSteps = 1 << 15;

/**
 * Photographs a scene: R = ground · (1 − c) + ink · c in linear light, coverage averaged over the lens blur and the
 * pixel's area, then light, cast, flare, noise, curve and rounding. Places are exact at every 8th pixel and
 * linear between (off by less than 0.001 mm). `blankWhite` puts an even white sheet of reflectance 0.9 in place of the scene.
 */
export function takePhotograph(
  scene: Scene,
  camera: Camera,
  sensor: SensorSettings,
  seed: number,
  blankWhite = false,
): RenderedPicture {
  const { widthPx, heightPx, pxPerMm } = camera.pose;
  const codes =
    sensor.bits === 8 ? new Uint8Array(widthPx * heightPx * 3) : new Uint16Array(widthPx * heightPx * 3);
  const sigmaPx = Math.sqrt(sensor.blurPx ** 2 + 1 / 12);
  const coverage = blankWhite
    ? new Uint16Array(0)
    : smoothedCoverage(scene.coverage, (sigmaPx / pxPerMm) * scene.coverage.cellsPerMm);
  const painter = scenePainter(scene, coverage, sigmaPx / pxPerMm);
  const table = codeTable(sensor, codeSteps);
  const { draws, walk } = normalTable(seed);
  const places = blockRow(camera, scene);
  let upper = places(0);
  const colour: [number, number, number] = [0.9, 0.9, 0.9];
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  for (let blockY = 0; blockY * blockPx < heightPx; blockY++) {
    const lower = places(blockY + 1);
    for (let j = 0; j < blockPx && blockY * blockPx + j < heightPx; j++) {
      const y = blockY * blockPx + j;
      const down = (j + 0.5) / blockPx;
      const v = (y + 0.5 - heightPx / 2) / halfDiagonal;
      let noisePlace = (walk() * draws.length) | 0;
      for (let x = 0; x < widthPx; x++) {
        const column = (x / blockPx) | 0;
        const across = (x - column * blockPx + 0.5) / blockPx;
        if (!blankWhite) painter.paint(upper, lower, column * 4, across, down, colour);
        const u = (x + 0.5 - widthPx / 2) / halfDiagonal;
        const light =
          sensor.exposure *
          (1 + sensor.lightSlope[0] * u + sensor.lightSlope[1] * v - sensor.falloff * (u * u + v * v));
        const stray = sensor.flare + glareAt(sensor.glare, u, v);
        const at = (y * widthPx + x) * 3;
        if ((x & 63) === 0) noisePlace = (walk() * 65536) | 0;
        for (let c = 0; c < 3; c++) {
          const clean = colour[c as 0]! * light * sensor.cast[c as 0]! + stray;
          noisePlace = (noisePlace + 1) & 65535;
          const seen = clean + draws[noisePlace]! * Math.sqrt(sensor.shotNoise * clean + sensor.readNoise);
          const place = seen <= 0 ? 0 : seen >= 1 ? codeSteps : seen * codeSteps;
          const low = place | 0;
          const code =
            low === codeSteps ? table[low]! : table[low]! + (table[low + 1]! - table[low]!) * (place - low);
          codes[at + c] = code + 0.5;
        }
      }
    }
    upper = lower;
  }
  return { widthPx, heightPx, bits: sensor.bits, codes };
}

/** Plane mm and stone mm at the corners of every block along one block row: x, y, stone x, stone y. */
function blockRow(camera: Camera, scene: Scene): (blockY: number) => Float64Array {
  const columns = Math.ceil(camera.pose.widthPx / blockPx) + 1;
  return (blockY) => {
    const row = new Float64Array(columns * 4);
    for (let i = 0; i < columns; i++) {
      const plane = camera.toPlaneMm([i * blockPx, blockY * blockPx]);
      const stone = scene.toStoneMm(plane);
      row.set([plane[0], plane[1], stone[0], stone[1]], i * 4);
    }
    return row;
  };
}

/** Fills in the linear reflectance of the scene at a place between four block corners. */
function scenePainter(scene: Scene, smoothed: Uint16Array, blurMm: number) {
  const { body, coverage } = scene;
  const fineAmount = body.fineAmount / (1 + (blurMm / 0.25) ** 2);
  const softMm = Math.max(0.06, blurMm * 1.6);
  const maxX = coverage.columns - 1.001;
  const maxY = coverage.rows - 1.001;

  const coverageAt = (xMm: number, yMm: number): number => {
    const x = (xMm - coverage.originMm[0]) * coverage.cellsPerMm - 0.5;
    const y = (yMm - coverage.originMm[1]) * coverage.cellsPerMm - 0.5;
    if (!(x >= 0 && y >= 0 && x < maxX && y < maxY)) return 0;
    const left = x | 0;
    const top = y | 0;
    const cell = top * coverage.columns + left;
    const fx = x - left;
    const fy = y - top;
    const first = smoothed[cell]! * (1 - fx) + smoothed[cell + 1]! * fx;
    const second =
      smoothed[cell + coverage.columns]! * (1 - fx) + smoothed[cell + coverage.columns + 1]! * fx;
    return (first * (1 - fy) + second * fy) / 65535;
  };

  return {
    paint(
      upper: Float64Array,
      lower: Float64Array,
      at: number,
      across: number,
      down: number,
      colour: number[],
    ) {
      const a = (1 - across) * (1 - down);
      const b = across * (1 - down);
      const c = (1 - across) * down;
      const d = across * down;
      const x = a * upper[at]! + b * upper[at + 4]! + c * lower[at]! + d * lower[at + 4]!;
      const y = a * upper[at + 1]! + b * upper[at + 5]! + c * lower[at + 1]! + d * lower[at + 5]!;
      const depth = insideMm(body, x, y);
      const share = depth >= softMm ? 1 : depth <= -softMm ? 0 : 0.5 + (0.5 * depth) / softMm;
      if (share < 1) paintAround(scene, softMm, x, y, depth, colour);
      if (share === 0) return;
      const stoneX = a * upper[at + 2]! + b * upper[at + 6]! + c * lower[at + 2]! + d * lower[at + 6]!;
      const stoneY = a * upper[at + 3]! + b * upper[at + 7]! + c * lower[at + 3]! + d * lower[at + 7]!;
      paintBody(body, fineAmount, coverageAt(stoneX, stoneY), x, y, depth, share, colour);
    },
  };
}

function paintBody(
  body: Body,
  fineAmount: number,
  covered: number,
  x: number,
  y: number,
  depth: number,
  share: number,
  colour: number[],
): void {
  const mottle = body.mottleAmount * noiseAt(body.mottle, x + 150, y + 150);
  const fine = fineAmount * noiseAt(body.fine, x, y);
  // A stone's edge is rounded off and turns away from the light; a sheet only thins at the deckle.
  const rim = body.kind === 'stone' ? 1 - 0.35 * Math.exp(-depth / 1.8) : 1 - 0.05 * Math.exp(-depth / 1.2);
  const bare = (1 + mottle + fine) * rim;
  for (let c = 0; c < 3; c++) {
    // Clouds in stone are as much warm and cold as light and dark.
    const tinted = body.ground[c]! * bare * (1 + (c - 1) * 0.25 * mottle);
    const value = tinted * (1 - covered) + body.ink[c]! * covered;
    colour[c] = share === 1 ? value : colour[c]! * (1 - share) + value * share;
  }
}

function paintAround(
  { table, chips, body }: Scene,
  softMm: number,
  x: number,
  y: number,
  depth: number,
  colour: number[],
): void {
  tableColour(table, x, y, colour);
  const shade = 1 - table.shadow * Math.exp(Math.min(0, depth) / 5);
  for (let c = 0; c < 3; c++) colour[c]! *= shade;
  if (body.sideFaceMm > 0) {
    const face = insideMm(body, x - 0.25 * body.sideFaceMm, y - body.sideFaceMm);
    const share = Math.min(1, Math.max(0, 0.5 + (0.5 * face) / softMm));
    const rough = 0.4 * (1 + 0.12 * noiseAt(table.noise, x * 2, y * 5));
    for (let c = 0; c < 3; c++) colour[c] = colour[c]! * (1 - share) + body.ground[c]! * rough * share;
  }
  for (const chip of chips) {
    const inside = Math.min(
      x - chip.leftMm,
      chip.leftMm + chip.widthMm - x,
      y - chip.topMm,
      chip.topMm + chip.heightMm - y,
    );
    if (inside <= -softMm) continue;
    const share = Math.min(1, 0.5 + (0.5 * inside) / softMm);
    for (let c = 0; c < 3; c++) colour[c] = colour[c]! * (1 - share) + chip.reflectance * share;
  }
}
