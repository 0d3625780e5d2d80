import { type Random, seededRandom } from '../../../foundation/random.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import {
  type AreaMark,
  cornerMarks,
  type Drawing,
  type Mark,
  rectangleMm,
  type StrokeMark,
} from '../drawing.ts';
import { type NoiseField, noiseAt, noiseField } from '../noise.ts';
import { crayonTone } from './testSheet.ts';
import { washTone } from './washTone.ts';

const moon = { centreMm: [292, 62] as Point, radiusMm: 19 };

const sky: readonly Point[] = [
  [22, 20],
  [378, 20],
  [378, 118],
  [300, 122],
  [210, 117],
  [120, 123],
  [22, 119],
];

const mudbank: readonly Point[] = [
  [22, 172],
  [70, 158],
  [130, 150],
  [196, 156],
  [252, 170],
  [300, 176],
  [300, 238],
  [22, 238],
];

const reedBed = rectangleMm(306, 132, 72, 106);
const post = rectangleMm(86, 92, 15, 74);
const water: readonly Point[] = [
  [110, 128],
  [296, 128],
  [296, 166],
  [252, 162],
  [196, 148],
  [130, 142],
  [110, 146],
];

/**
 * "Low Water", 400 × 300 mm, for stone S-01 of the invented Saltreach Stone Room: a wash sky with a stopped-out moon,
 * a crayon mudbank, pen-line reeds, a solid post, bare water, and a ladder of crayon tones in the lower margin.
 */
export function lowWater(seed: number): Drawing {
  const random = seededRandom(seed);
  const slow = noiseField(random, 450, 350, 1, [
    [30, 1],
    [9, 0.6],
  ]);
  const skyWash = washTone(seed + 1, 0.42, sky);
  const marks: Mark[] = [
    area('sky', 'wash', sky, (x, y) => skyWash(x, y) * (1.25 - 0.75 * ((y - 20) / 100))),
    area('mudbank', 'crayon', mudbank, mudTone(slow)),
    {
      kind: 'strokes',
      zoneId: 'mudbank',
      texture: 'crayon',
      tone: 0.85,
      widthMm: 1.1,
      linesMm: gullies(random),
    },
    reeds(random),
    area('post', 'full', post, () => 1),
  ];
  const zones: Zone[] = [
    { id: 'sky', name: 'Sky', medium: 'wash', deposit: 'wash', polygonMm: sky },
    {
      id: 'moon',
      name: 'Moon',
      medium: 'blank',
      intention: 'stop-out',
      polygonMm: circleMm(moon.centreMm, moon.radiusMm - 0.5),
    },
    { id: 'mudbank', name: 'Mudbank', medium: 'crayon', deposit: 'middle', polygonMm: mudbank },
    { id: 'reeds', name: 'Reeds', medium: 'pen', deposit: 'middle', polygonMm: reedBed },
    { id: 'post', name: 'Post', medium: 'solid', deposit: 'solid', polygonMm: post },
    { id: 'water', name: 'Water, bare', medium: 'blank', polygonMm: water },
  ];
  [0.06, 0.12, 0.2, 0.32, 0.45, 0.58, 0.72, 0.86].forEach((tone, i) => {
    const box = rectangleMm(22 + i * 45, 250, 38, 30);
    const id = `step-${i + 1}`;
    const deposit = tone < 0.25 ? 'light' : tone < 0.6 ? 'middle' : 'dark';
    zones.push({ id, name: `Step ${i + 1}`, medium: 'crayon', deposit, polygonMm: box });
    marks.push(area(id, 'crayon', box, crayonTone(tone, slow)));
  });
  marks.push(cornerMarks([400, 300]));
  return { name: 'Low Water', sizeMm: [400, 300], marks, zones, stopOuts: [moon] };
}

function area(
  zoneId: string,
  texture: AreaMark['texture'],
  polygonMm: readonly Point[],
  tone: AreaMark['tone'],
): AreaMark {
  return { kind: 'area', zoneId, texture, polygonMm, tone };
}

/** Wet mud: lighter along its crest, darker down the bank, with bands where the tide stood. */
function mudTone(slow: NoiseField): AreaMark['tone'] {
  return (x, y) => {
    const crest = 152 + 12 * ((x - 140) / 130) ** 2;
    const down = Math.max(0, (y - crest) / 85);
    const band = 0.07 * Math.sin(26 * Math.sqrt(down + 0.02) + 2.2 * noiseAt(slow, x * 0.7, y));
    const tone = 0.12 + 0.62 * down + band + 0.07 * noiseAt(slow, x * 1.3, y * 2.1);
    return Math.min(0.96, Math.max(0.03, tone));
  };
}

/** Small water courses that run down the bank. */
function gullies(random: Random): Point[][] {
  return Array.from({ length: 16 }, (_, i) => {
    let x = 40 + i * 16 + 8 * random();
    let y = 172 + 16 * random();
    const line: Point[] = [[x, y]];
    while (y < 228 && line.length < 16) {
      x += (random() - 0.42) * 5;
      y += 2 + 3 * random();
      line.push([x, y]);
    }
    return line;
  });
}

function reeds(random: Random): StrokeMark {
  const linesMm: Point[][] = [];
  for (let i = 0; i < 95; i++) {
    const foot: Point = [308 + 68 * random(), 236 - 26 * random() ** 2];
    const height = 40 + 52 * random();
    const lean = (random() - 0.35) * 16;
    const bend = (random() - 0.3) * 12;
    const stalk = Array.from({ length: 9 }, (_, k): Point => {
      const t = k / 8;
      const x = foot[0] + lean * t + bend * t * t * t;
      return [Math.min(377, Math.max(307, x)), Math.max(133, foot[1] - height * t)];
    });
    linesMm.push(stalk);
  }
  return { kind: 'strokes', zoneId: 'reeds', texture: 'full', tone: 1, widthMm: 0.42, linesMm };
}

function circleMm(centreMm: Point, radiusMm: number): Point[] {
  return Array.from({ length: 40 }, (_, i) => [
    centreMm[0] + radiusMm * Math.cos((i * Math.PI) / 20),
    centreMm[1] + radiusMm * Math.sin((i * Math.PI) / 20),
  ]);
}
