import type { Verdict, WarningCode } from '../../records/comparison.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { StoneColour } from './body.ts';
import type { StretchSettings } from './dampStretch.ts';
import type { Drawing } from './drawing.ts';
import type { Fault } from './faults/fault.ts';
import { type Damage, faithfulTransfer, noDamage, type ToneTransfer } from './printing.ts';
import { plainSensor, type SensorSettings } from './sensor.ts';
import type { TableKind } from './tableTop.ts';

/** How one of the two photographs is taken. */
export interface ShotSettings {
  readonly rollDegrees: number;
  readonly tiltXDegrees: number;
  readonly tiltYDegrees: number;
  readonly distanceMm: number;
  readonly lensBend: number;
  readonly sensor: SensorSettings;
  readonly table: TableKind;
}

/** How the photographs are handed over: as a phone's JPEG, or as 16-bit files; possibly turned, with an EXIF tag that says so. */
export interface FileSettings {
  readonly kind: 'jpeg' | 'png16' | 'tiff16';
  readonly quality: number;
  readonly exifOrientation: 1 | 3 | 6 | 8;
}

/** Everything that makes one pair: the same case gives the same pixels on every machine. */
export interface PairCase {
  readonly name: string;
  readonly seed: number;
  readonly megapixels: number;
  readonly cellsPerMm: number;
  readonly drawing: Drawing;
  /** What the print shows, where it was pulled from another stone. */
  readonly printedDrawing: Drawing | null;
  readonly transfer: ToneTransfer;
  readonly zoneTransfers: Readonly<Record<string, ToneTransfer>>;
  readonly damage: Damage;
  /** Faults of pulling, laid on the print after printing. */
  readonly faults?: readonly Fault[];
  /** Linear reflectance of full films as a factor of the usual: above 1 is a weak film. */
  readonly inkReflectance?: { readonly stone: number; readonly print: number };
  readonly mirrored: boolean;
  readonly stretch: StretchSettings;
  readonly stoneColour: StoneColour;
  readonly stone: ShotSettings;
  readonly print: ShotSettings;
  /** Bare paper beyond the work rectangle, seen as the print is: left, top, right, bottom, mm. Negative where it missed. */
  readonly sheetMarginsMm: readonly [number, number, number, number];
  readonly chips: boolean;
  readonly repeats: boolean;
  readonly flats: boolean;
  /** Greatest error of a corner set on the print, mm. */
  readonly cornerErrorMm: number;
  /** Whether corners are handed over at all. */
  readonly cornersGiven: boolean;
  readonly files: FileSettings;
  readonly verdict: Verdict;
  readonly warnings: readonly WarningCode[];
}

export const plainShot: ShotSettings = {
  rollDegrees: 1.5,
  tiltXDegrees: 2.5,
  tiltYDegrees: -2,
  distanceMm: 720,
  lensBend: 0.0015,
  sensor: plainSensor,
  table: 'slate',
};

const plainGrowth: Point = [0.006, 0.011];

/** A pair in which nothing is out of the ordinary; cases change what they are about. */
export function plainCase(name: string, seed: number, drawing: Drawing): PairCase {
  return {
    name,
    seed,
    megapixels: 6,
    cellsPerMm: 8,
    drawing,
    printedDrawing: null,
    transfer: { ...faithfulTransfer, gain: 0.04 },
    zoneTransfers: {},
    damage: noDamage,
    mirrored: true,
    stretch: { growth: plainGrowth, unevenMm: 0.75, seed: seed + 11 },
    stoneColour: 'yellow',
    stone: plainShot,
    print: { ...plainShot, rollDegrees: -2.2, tiltXDegrees: -1.5, tiltYDegrees: 3, lensBend: 0.001 },
    sheetMarginsMm: [34, 30, 38, 44],
    chips: false,
    repeats: false,
    flats: false,
    cornerErrorMm: 5,
    cornersGiven: true,
    files: { kind: 'jpeg', quality: 90, exifOrientation: 1 },
    verdict: 'ok',
    warnings: [],
  };
}
