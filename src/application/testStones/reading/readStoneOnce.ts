import { mapOfCorners } from '../../../imaging/matching/register.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import type { DecodedPhotographs } from '../../comparison/decodeAll.ts';
import type { MeasureInput } from '../../comparison/measureInput.ts';
import { engineVersion } from '../../engineVersion.ts';
import { runInThread, threadModule } from '../../threads/runInThread.ts';
import { bytesKey, type KeptParts, partKey } from './keptParts.ts';
import { patchReadingVersion } from './patchReadingVersion.ts';
import { type PatchSide, type PatchSideInput, readPatchSide } from './readPatchSide.ts';

/** The stone as it was read before, or as it is being read in a thread of its own. */
export interface StoneBeingRead {
  done(): Promise<PatchSide>;
  stop(): void;
}

/**
 * Reads the stone while the print is laid onto it: neither needs the other, and there are two cores. Where the same
 * photograph with the same corners and patches was read before, for another print, that is taken.
 * @param corners of the rectangle on the stone's photograph, given or found.
 * @returns null where the corners span no rectangle.
 */
export async function readStoneOnce(
  input: MeasureInput,
  photos: DecodedPhotographs,
  corners: Corners,
  parts: KeptParts,
): Promise<StoneBeingRead | null> {
  const map = mapOfCorners(input.sizeMm, corners);
  if (!map) return null;
  const chips = input.chips.filter(({ photo }) => photo === 'stone');
  const key = partKey(
    'stone',
    engineVersion,
    patchReadingVersion,
    corners,
    [input.stone, input.stone.repeat, input.stone.flat].map((file) => file && bytesKey(file.bytes)),
    chips.map(({ polygonPx, reflectance }) => [polygonPx, reflectance]),
    input.zones.map(({ medium, deposit, intention, polygonMm }) => [medium, deposit, intention, polygonMm]),
    input.sizeMm,
  );
  const known = await parts.known<PatchSide>(key);
  if (known !== null) return { done: async () => known, stop: () => {} };
  const { zones, sizeMm } = input;
  const read = startReading({
    side: {
      side: 'stone',
      photo: photos.stone,
      map,
      flat: photos.flats.stone,
      chips,
      zones,
      sizeMm,
      covered: null,
    },
    repeat: photos.repeats.stone,
    errorMm: null,
  });
  return {
    async done() {
      const stone = await read.done();
      await parts.keep(key, stone);
      return stone;
    },
    stop: read.stop,
  };
}

function startReading(input: PatchSideInput): StoneBeingRead {
  const module = threadModule(import.meta.url, 'patchSideThread');
  const thread = runInThread<never, PatchSide>(module, input);
  return {
    async done() {
      const end = await thread.end;
      // where the thread broke it is read here
      return end.kind === 'answered' ? end.answer : readPatchSide(input);
    },
    stop: () => void thread.terminate(),
  };
}
