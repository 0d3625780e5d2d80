import { seededRandom } from '../../foundation/random.ts';
import type { Chip } from '../../records/zone.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { type Body, sheetBody, stoneBody } from './body.ts';
import { camera } from './camera.ts';
import { chipsSeen, placedChips } from './chipsOnTable.ts';
import { clickedProof, clickedStone } from './clickedCorners.ts';
import { sheetMap } from './dampStretch.ts';
import { applyFaults } from './faults/applyFaults.ts';
import { framed } from './framing.ts';
import { paintPair } from './paintPair.ts';
import type { PairCase, ShotSettings } from './pairCase.ts';
import { tableTop } from './tableTop.ts';
import { type RenderedPicture, type Scene, takePhotograph } from './takePhotograph.ts';
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
