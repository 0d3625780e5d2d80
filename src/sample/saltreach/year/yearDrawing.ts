import { type Random, seededRandom } from '../../../foundation/random.ts';
import type { WorkRectangle, WorkZone } from '../../../records/work.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { cornerMarks, type Drawing, type Mark, rectangleMm } from '../../render/drawing.ts';
import { washTone } from '../../render/layouts/washTone.ts';
import { type NoiseField, noiseAt, noiseField } from '../../render/noise.ts';

/** Bare stone round the zones that belongs to the work rectangle, mm; at the foot there is room for a bar of full tusche. */
const roundMm = 14;
const footMm = 26;
const barMm = { width: 44, height: 10, below: 9 };

/** Coverage by deposit; a wash that spans them lies between. */
const tones = { light: 0.16, middle: 0.36, dark: 0.74, solid: 1, wash: 0.36 } as const;

/** The extent of a work's zones with some bare stone round them. */
export function yearRectangle(zones: readonly WorkZone[]): WorkRectangle {
  const points = zones.flatMap(({ polygonMm }) => polygonMm);
  const least = (axis: 0 | 1) => Math.min(...points.map((point) => point[axis])) - roundMm;
  const most = (axis: 0 | 1) => Math.max(...points.map((point) => point[axis]));
  const offsetMm: Point = [least(0), least(1)];
  return { offsetMm, sizeMm: [most(0) + roundMm - offsetMm[0], most(1) + footMm - offsetMm[1]] };
}

/** Zones in mm from the top left of their rectangle, as comparisons have them. */
export function zonesInRectangle(zones: readonly WorkZone[]): Zone[] {
  const [left, top] = yearRectangle(zones).offsetMm;
  return zones.map(({ tone: _, ...zone }) => ({
    ...zone,
    polygonMm: zone.polygonMm.map(([x, y]): Point => [x - left, y - top]),
  }));
}

/** A drawing that has what a work's zones say: crayon, washes and pen, with a bar of full tusche at its foot to read tones by. */
export function yearDrawing(name: string, workZones: readonly WorkZone[], seed: number): Drawing {
  const random = seededRandom(seed);
  const zones = zonesInRectangle(workZones);
  const { sizeMm } = yearRectangle(workZones);
  const slow = noiseField(random, 500, 500, 1, [
    [34, 1],
    [9, 0.7],
  ]);
  const marks = zones.map((zone, index) => markOf(zone, slow, seededRandom(seed + index + 1), seed + index));
  const [left, top] = [roundMm, sizeMm[1] - footMm + barMm.below];
  const bar: Mark = {
    kind: 'area',
    zoneId: null,
    texture: 'full',
    polygonMm: rectangleMm(left, top, barMm.width, barMm.height),
    tone: () => 1,
  };
  return { name, sizeMm, marks: [...marks, bar, cornerMarks(sizeMm)], zones, stopOuts: [] };
}

function markOf(zone: Zone, slow: NoiseField, random: Random, seed: number): Mark {
  const { id, medium, polygonMm } = zone;
  const tone = tones[zone.deposit ?? 'middle'];
  if (medium === 'autographic-ink') return penLines(id, polygonMm, random);
  const area = { kind: 'area', zoneId: id, polygonMm } as const;
  if (tone === 1) return { ...area, texture: 'full', tone: () => 1 };
  if (medium.startsWith('tusche')) return { ...area, texture: 'wash', tone: washTone(seed, tone, polygonMm) };
  // as a hand lays it: heavier here, lighter there, never beyond its deposit
  const spread = 0.3 * Math.min(tone, 1 - tone);
  return {
    ...area,
    texture: 'crayon',
    tone: (x, y) => tone + spread * Math.max(-1.5, Math.min(1.5, noiseAt(slow, x, y))),
  };
}

/** Pen lines down an upright rectangle, no two alike, that cover about a third of it. */
function penLines(zoneId: string, polygonMm: readonly Point[], random: Random): Mark {
  const [left, top] = polygonMm[0]!;
  const [right, bottom] = polygonMm[2]!;
  const linesMm: Point[][] = [];
  for (let x = left + 1; x < right - 1; x += 0.9 + 0.8 * random()) {
    const from = top + 1 + 0.12 * (bottom - top) * random();
    const to = bottom - 1 - 0.12 * (bottom - top) * random();
    const lean = 3 * (random() - 0.5);
    linesMm.push(
      [0, 0.35, 0.7, 1].map((t): Point => {
        const at = x + lean * t + 0.6 * (random() - 0.5);
        return [Math.min(right - 0.5, Math.max(left + 0.5, at)), from + t * (to - from)];
      }),
    );
  }
  return { kind: 'strokes', zoneId, texture: 'full', tone: 1, widthMm: 0.45, linesMm };
}
