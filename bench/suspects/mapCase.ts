import { normalDraw, seededRandom } from '../../src/foundation/random.ts';
import type { CoverageWithDoubt } from '../../src/imaging/evidence/evidenceGrid.ts';
import { pictureEvidence } from '../../src/imaging/evidence/pictureEvidence.ts';
import { pullChanges } from '../../src/imaging/evidence/pullChanges.ts';
import { gaussianBlur } from '../../src/imaging/operations/gaussianBlur.ts';
import type { ComparisonRecord, ZoneResult } from '../../src/records/comparison.ts';
import type { Features } from '../../src/records/suspects.ts';
import type { CoverageRaster } from '../../src/sample/render/coverageRaster.ts';
import { applyFaults } from '../../src/sample/render/faults/applyFaults.ts';
import { borderMm, paintPair } from '../../src/sample/render/paintPair.ts';
import { containsPoint } from '../../src/science/geometry/polygon.ts';
import type { PlantedCase } from './plantedCase.ts';

const pxPerMm = 2;
/** Strengths of a sound print and stone, the densities that the sensor's curve leaves. */
const sound = { print: 1.36, stone: 1.0 };

/** Features of a planted case, read from coverage maps with the noise of a measurement, without photographs. */
export function mapCaseFeatures(planted: PlantedCase): Features {
  const random = seededRandom(planted.seed + 9);
  const both = planted.pulls.map((pull, i) => {
    const { drawing } = planted;
    const painted = paintPair({
      drawing,
      transfer: pull.transfer,
      zoneTransfers: pull.zoneTransfers,
      damage: pull.damage,
      cellsPerMm: pxPerMm,
      seed: planted.seed + 3,
    });
    const print = applyFaults(painted.print, painted.stone, pull.faults, drawing.sizeMm);
    const drawn = measuredMap(painted.stone, drawing.sizeMm, 0.003, random);
    const printed = measuredMap(print, drawing.sizeMm, 0.004, random);
    const spoiled = planted.photographSpoiled && random() < 0.9;
    const density = (value: number) => {
      const read = value + 0.03 * normalDraw(random);
      return { value: read, low: read - 0.06, high: read + 0.06, basis: 'measured' as const, warnings: [] };
    };
    const measured: Pick<ComparisonRecord, 'zones' | 'warnings' | 'strength'> = {
      zones: zoneResults(drawn, printed, drawing.zones),
      warnings: spoiled ? [{ code: 'glare', message: '' }] : [],
      strength: {
        stone: density(sound.stone - planted.pulls[0].weakStone),
        proof: density(sound.print - pull.weakPrint),
      },
    };
    return {
      i,
      ...pictureEvidence({
        drawn,
        printed,
        zones: drawing.zones,
        measured,
        travel: 'down',
        rollerDiameterMm: null,
        strength: null,
      }),
    };
  });
  const [first, second] = both as [(typeof both)[0], (typeof both)[0]];
  return { ...first.features, ...pullChanges(first.cells, second.cells), ...planted.log };
}

/** Coverage smoothed as the maps are, with noise from place to place and a ground that is off smoothly. */
function measuredMap(
  raster: CoverageRaster,
  [widthMm, heightMm]: readonly [number, number],
  groundError: number,
  random: () => number,
): CoverageWithDoubt {
  const [widthPx, heightPx] = [Math.round(widthMm * pxPerMm), Math.round(heightMm * pxPerMm)];
  const inset = borderMm * raster.cellsPerMm;
  const plane = new Float32Array(raster.data.length);
  for (let i = 0; i < plane.length; i++) plane[i] = raster.data[i]! / 255;
  const smooth = gaussianBlur(plane, raster.columns, raster.rows, pxPerMm * 0.95);
  const noise = gaussianBlur(
    Float32Array.from({ length: widthPx * heightPx }, () => normalDraw(random) * 0.012),
    widthPx,
    heightPx,
    1.2,
  );
  const [level, across, down] = [0, 0, 0].map(() => groundError * normalDraw(random)) as [
    number,
    number,
    number,
  ];
  const data = new Float32Array(widthPx * heightPx);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) {
      const i = y * widthPx + x;
      const c = smooth[(y + inset) * raster.columns + x + inset]!;
      const ground = level * 0.5 + across * (x / widthPx - 0.5) + down * (y / heightPx - 0.5);
      data[i] = c + noise[i]! + (1 - c) * ground;
    }
  const deviation = new Float32Array(data.length).fill(groundError);
  return { widthPx, heightPx, pxPerMm, originMm: [0, 0], data, deviation };
}

function zoneResults(
  drawn: CoverageWithDoubt,
  printed: CoverageWithDoubt,
  zones: PlantedCase['drawing']['zones'],
): ZoneResult[] {
  return zones.map((zone) => {
    let [d, p, count] = [0, 0, 0];
    const xs = zone.polygonMm.map(([x]) => x);
    const ys = zone.polygonMm.map(([, y]) => y);
    for (let y = Math.min(...ys) + 1; y < Math.max(...ys) - 1; y += 1)
      for (let x = Math.min(...xs) + 1; x < Math.max(...xs) - 1; x += 1) {
        if (!containsPoint(zone.polygonMm, [x, y])) continue;
        const i = Math.floor(y * pxPerMm) * drawn.widthPx + Math.floor(x * pxPerMm);
        d += drawn.data[i]!;
        p += printed.data[i]!;
        count++;
      }
    const parts = { noise: 0, ground: 0, solid: 0, response: 0, registration: 0, floor: 0 };
    const told = (sum: number) => ({
      coverage: sum / count,
      low: sum / count - 0.015,
      high: sum / count + 0.015,
      parts,
    });
    return {
      id: zone.id,
      name: zone.name,
      medium: zone.medium,
      drawn: told(d),
      printed: told(p),
      drawnDarkness: d / count,
      printedDarkness: p / count,
      change: 'undecided',
      covered: 1,
      areaMm2: 0,
    };
  });
}
