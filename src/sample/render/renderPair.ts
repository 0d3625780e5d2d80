import { normalDraw, seededRandom } from '../../foundation/random.ts';
import type { Chip } from '../../records/zone.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { type Body, sheetBody, stoneBody } from './body.ts';
import { type Camera, camera } from './camera.ts';
import { sheetMap } from './dampStretch.ts';
import { applyFaults } from './faults/applyFaults.ts';
import { paintPair } from './paintPair.ts';
import type { PairCase, ShotSettings } from './pairCase.ts';
import { tableTop } from './tableTop.ts';
import { type PlacedChip, type RenderedPicture, type Scene, takePhotograph } from './takePhotograph.ts';
import { type Truth, truthOf } from './truth.ts';
import type { TruthMaps } from './truthMaps.ts';

export type PictureName = 'stone' | 'print' | 'stone-repeat' | 'print-repeat' | 'stone-flat' | 'print-flat';

export interface RenderedPair {
  /** The pictures which this case has. */
  readonly names: readonly PictureName[];
  /** Takes one of them, upright; nothing is kept, so that only one need be in memory. */
  take(name: PictureName): RenderedPicture;
  readonly chips: readonly Chip[];
  /** Corners as a person would set them on each picture (on prints: where the stone's corners came to lie). */
  cornersPx(name: PictureName): Corners;
  readonly truth: Truth;
  readonly maps: TruthMaps;
}

const chipSizeMm = 13;
const chipGapMm = 8;
const chipReflectances = [0.86, 0.56, 0.33, 0.19, 0.09, 0.045];
/** Table seen all round the object. */
const tableMarginMm = 14;

/** Paints the stone and its print, sets up the cameras and works out the truth. Deterministic in the case. */
export function renderPair(pair: PairCase): RenderedPair {
  const { drawing, seed } = pair;
  const { sizeMm } = drawing;
  const paint = { transfer: pair.transfer, zoneTransfers: pair.zoneTransfers, damage: pair.damage };
  const sound = paintPair({ ...paint, drawing, cellsPerMm: pair.cellsPerMm, seed: seed + 1 });
  const painted = { ...sound, print: applyFaults(sound.print, sound.stone, pair.faults ?? [], sizeMm) };
  const printed = pair.printedDrawing
    ? paintPair({ ...paint, drawing: pair.printedDrawing, cellsPerMm: pair.cellsPerMm, seed: seed + 2 }).print
    : painted.print;
  const sheet = sheetMap(pair.stretch, sizeMm, pair.mirrored);
  const ink = pair.inkReflectance ?? { stone: 1, print: 1 };
  const bare = stoneBody({ sizeMm, marginsMm: [32, 36, 30, 38], seed: seed + 3 }, pair.stoneColour);
  const stone = withInk(bare, ink.stone);
  const paper = withInk(sheetBody({ sizeMm, marginsMm: pair.sheetMarginsMm, seed: seed + 4 }), ink.print);

  const scenes: Readonly<Record<'stone' | 'print', Scene>> = {
    stone: {
      body: stone,
      coverage: painted.stone,
      toStoneMm: (planeMm) => planeMm,
      table: tableTop(pair.stone.table, seed + 5),
      chips: placedChips(pair, stone),
    },
    print: {
      body: paper,
      coverage: printed,
      toStoneMm: sheet.toStoneMm,
      table: tableTop(pair.print.table, seed + 6),
      chips: placedChips(pair, paper),
    },
  };
  const cameras = {
    stone: camera(framed(pair, pair.stone, scenes.stone)),
    print: camera(framed(pair, pair.print, scenes.print)),
  };
  const { truth, maps } = truthOf({
    painted,
    sizeMm,
    zones: drawing.zones,
    sheet,
    sheetBody: paper,
    stoneCamera: cameras.stone,
    printCamera: cameras.print,
    verdict: pair.verdict,
    warnings: pair.warnings,
  });

  const shotOf = (name: PictureName) => {
    const side = name.startsWith('stone') ? ('stone' as const) : ('print' as const);
    const noiseSeed = seed + 20 + pictureOrder.indexOf(name);
    const settings = name.endsWith('repeat') ? setUpAgain(pair[side], noiseSeed) : pair[side];
    const scene = scenes[side];
    return { side, noiseSeed, settings, scene, camera: camera(framed(pair, settings, scene)) };
  };
  return {
    names: [
      'stone',
      'print',
      ...(pair.repeats ? (['stone-repeat', 'print-repeat'] as const) : []),
      ...(pair.flats ? (['stone-flat', 'print-flat'] as const) : []),
    ],
    take(name) {
      const shot = shotOf(name);
      return takePhotograph(
        shot.scene,
        shot.camera,
        shot.settings.sensor,
        shot.noiseSeed,
        name.endsWith('flat'),
      );
    },
    cornersPx(name) {
      const shot = shotOf(name);
      return shot.side === 'stone'
        ? clickedStone(pair, shot.camera)
        : clickedProof(pair, (mm) => shot.camera.toPx(sheet.toSheetMm(mm)));
    },
    chips: [
      ...chipsSeen('stone', scenes.stone.chips, cameras.stone),
      ...chipsSeen('proof', scenes.print.chips, cameras.print),
    ],
    truth,
    maps,
  };
}

function withInk(body: Body, factor: number): Body {
  const [red, green, blue] = body.ink;
  return factor === 1 ? body : { ...body, ink: [red * factor, green * factor, blue * factor] };
}

const pictureOrder: readonly PictureName[] = [
  'stone',
  'print',
  'stone-repeat',
  'print-repeat',
  'stone-flat',
  'print-flat',
];

/** A column of grey chips on the table at the object's right. */
function placedChips(pair: PairCase, body: Body): PlacedChip[] {
  if (!pair.chips) return [];
  return chipReflectances.map((reflectance, i) => ({
    name: `grey ${reflectance}`,
    reflectance,
    leftMm: body.rightMm + chipGapMm,
    topMm: body.topMm + 30 + i * (chipSizeMm + 1.5),
    widthMm: chipSizeMm,
    heightMm: chipSizeMm,
  }));
}

/** Outlines as a person draws them, well inside each chip. */
function chipsSeen(photo: 'stone' | 'proof', chips: readonly PlacedChip[], seen: Camera): Chip[] {
  return chips.map((chip) => {
    const inset = 2.2;
    const [left, top] = [chip.leftMm + inset, chip.topMm + inset];
    const [right, bottom] = [chip.leftMm + chip.widthMm - inset, chip.topMm + chip.heightMm - inset];
    const cornersMm: Point[] = [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ];
    return {
      photo,
      name: chip.name,
      polygonPx: cornersMm.map((mm) => seen.toPx(mm)),
      reflectance: chip.reflectance,
    };
  });
}

/** Points the camera so that object, chips and some table fill the picture; long side of picture along the object's. */
function framed(pair: PairCase, shot: ShotSettings, scene: Scene) {
  const { body, chips } = scene;
  // The whole work rectangle stays in view, also where the sheet missed part of it.
  const [rectangleWidth, rectangleHeight] = pair.drawing.sizeMm;
  const leftMm = Math.min(body.leftMm, -10);
  const topMm = Math.min(body.topMm, -10);
  const bottomMm = Math.max(body.bottomMm, rectangleHeight + 10);
  const rightMm = Math.max(
    chips.length > 0 ? chips[0]!.leftMm + chipSizeMm : body.rightMm,
    rectangleWidth + 10,
  );
  const width = rightMm - leftMm;
  const height = bottomMm - topMm;
  const long = Math.round(Math.sqrt((pair.megapixels * 1e6 * 4) / 3) / 4) * 4;
  const short = Math.round((long * 0.75) / 4) * 4;
  const [widthPx, heightPx] = width > height ? [long, short] : [short, long];
  const roll = (shot.rollDegrees * Math.PI) / 180;
  const [along, aside] = [Math.abs(Math.cos(roll)), Math.abs(Math.sin(roll))];
  const spanX = width * along + height * aside + 2 * tableMarginMm;
  const spanY = height * along + width * aside + 2 * tableMarginMm;
  return {
    widthPx,
    heightPx,
    pxPerMm: Math.min(widthPx / spanX, heightPx / spanY) * 0.97,
    distanceMm: shot.distanceMm,
    centreMm: [(leftMm + rightMm) / 2, (topMm + bottomMm) / 2] as Point,
    rollDegrees: shot.rollDegrees,
    tiltXDegrees: shot.tiltXDegrees,
    tiltYDegrees: shot.tiltYDegrees,
    lensBend: shot.lensBend,
  };
}

/** The same object taken away, put back and photographed afresh: pose, light and exposure are a little different. */
function setUpAgain(shot: ShotSettings, seed: number): ShotSettings {
  const random = seededRandom(seed);
  const about = (value: number, spread: number) => value + spread * (2 * random() - 1);
  const { sensor } = shot;
  return {
    ...shot,
    rollDegrees: about(shot.rollDegrees, 1.5),
    tiltXDegrees: about(shot.tiltXDegrees, 1),
    tiltYDegrees: about(shot.tiltYDegrees, 1),
    distanceMm: about(shot.distanceMm, 15),
    sensor: {
      ...sensor,
      exposure: sensor.exposure * about(1, 0.03),
      lightSlope: [about(sensor.lightSlope[0], 0.02), about(sensor.lightSlope[1], 0.02)],
    },
  };
}

function cornersMm(pair: PairCase): Point[] {
  const [width, height] = pair.drawing.sizeMm;
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

/** Corners of the work rectangle under a loupe: a fifth of a millimetre off, as the marks themselves have a width. */
function clickedStone(pair: PairCase, seen: Camera): Corners {
  const random = seededRandom(pair.seed + 40);
  const corners = cornersMm(pair).map((mm): Point => {
    const [dx, dy] = [normalDraw(random) * 0.2, normalDraw(random) * 0.2];
    return seen.toPx([mm[0] + dx, mm[1] + dy]);
  });
  return corners as unknown as Corners;
}

/**
 * The stone's corners as guessed on the print: off by up to the case's error. Whoever sets them takes it for granted
 * that the print is the mirror image; on one that reads as the stone does, left and right come out exchanged.
 */
function clickedProof(pair: PairCase, toProofPx: (stoneMm: Point) => Point): Corners {
  const random = seededRandom(pair.seed + 41);
  const corners = cornersMm(pair).map((mm): Point => {
    const direction = random() * 2 * Math.PI;
    const distance = pair.cornerErrorMm * Math.sqrt(random());
    const x = pair.mirrored ? mm[0] : pair.drawing.sizeMm[0] - mm[0];
    return toProofPx([x + distance * Math.cos(direction), mm[1] + distance * Math.sin(direction)]);
  });
  return corners as unknown as Corners;
}
