import type { Photograph } from '../../../imaging/photograph.ts';
import type { Raster } from '../../../imaging/raster.ts';
import type { FoundSolid } from '../../../imaging/tone/findSolid.ts';
import { pictureWarnings, qualityLimits } from '../../../imaging/tone/pictureQuality.ts';
import { readSide } from '../../../imaging/tone/readSide.ts';
import { repeatFloor } from '../../../imaging/tone/repeatFloor.ts';
import type { SideInput } from '../../../imaging/tone/sideInput.ts';
import { type ZoneReading, zoneReading } from '../../../imaging/tone/zoneCoverage.ts';
import type { ComparisonWarning, GroundRecord, ResponseRecord } from '../../../records/comparison.ts';
import { straightenedPicture } from '../../comparison/comparisonPictures.ts';
import { repeatMap } from '../../comparison/repeatMap.ts';

/** A test stone, or a print of it, with its patches as zones. */
export interface PatchSideInput {
  readonly side: SideInput;
  /** The same object set up and photographed again. */
  readonly repeat: Photograph | null;
  /** Local standard deviation of the place, mm; null on the stone, whose place is given. */
  readonly errorMm: Raster | null;
}

/** What was read of one object by itself. */
export interface PatchTones {
  /** One for each patch in their order; null where it could not be read. */
  readonly readings: readonly (ZoneReading | null)[];
  /** null where nothing is dark enough, or the photograph is burnt out. */
  readonly solid: FoundSolid | null;
  readonly ground: GroundRecord;
  readonly response: ResponseRecord;
  /** Share of it in which a channel is clipped. */
  readonly clipped: number;
  /** See `sharpnessOf`. */
  readonly sharpness: number;
  /** What is wrong with the photograph, seen beside no other. */
  readonly warnings: readonly ComparisonWarning[];
}

export interface PatchSide {
  /** null where no bare ground can be found. */
  readonly tones: PatchTones | null;
  /** Straightened as it lies on the stone, a JPEG. */
  readonly picture: Uint8Array;
}

/** Reads the patches on one object. Heavy: meant for a thread. */
export async function readPatchSide({ side: input, repeat, errorMm }: PatchSideInput): Promise<PatchSide> {
  const { photo, map, chips, flat, zones, sizeMm } = input;
  const side = readSide(input);
  const asTaken = side && chips.length === 0 && flat === null ? side.raster : null;
  // coded on a thread of its own meanwhile
  const picture = straightenedPicture({ photo, map, raster: asTaken }, sizeMm);
  if (!side) return { tones: null, picture: await picture };
  const againMap = repeat && repeatMap(photo, map, repeat, sizeMm);
  const floor = repeatFloor(input, side, againMap && { photo: repeat, map: againMap });
  const solid = side.clipped <= qualityLimits.noTone ? side.solid : null;
  const tones: PatchTones = {
    readings: zones.map((zone) => (solid ? zoneReading(zone, side, solid, errorMm, floor) : null)),
    solid,
    ground: side.groundRecord,
    response: side.response,
    clipped: side.clipped,
    sharpness: side.sharpness,
    warnings: pictureWarnings(input, side, null),
  };
  return { tones, picture: await picture };
}
