import { decodePhotograph } from '../../src/imaging/codecs/decodePhotograph.ts';
import { type EvidenceInput, pictureEvidence } from '../../src/imaging/evidence/pictureEvidence.ts';
import { pullChanges } from '../../src/imaging/evidence/pullChanges.ts';
import { mapOfCorners, register } from '../../src/imaging/matching/register.ts';
import type { Photograph } from '../../src/imaging/photograph.ts';
import { measureTone, stoneSideInput } from '../../src/imaging/tone/measureTone.ts';
import { readSide } from '../../src/imaging/tone/readSide.ts';
import { defaultParameters } from '../../src/records/comparison.ts';
import type { Features } from '../../src/records/suspects.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { type PairCase, plainCase, plainShot } from '../../src/sample/render/pairCase.ts';
import { type PictureName, type RenderedPair, renderPair } from '../../src/sample/render/renderPair.ts';
import type { PlantedCase } from './plantedCase.ts';

/** Small pictures of small stones: about 4 px to the millimetre, what a phone's picture of a large stone has at least. */
const megapixels = 1.2;
const cellsPerMm = 4;

/** What the engine measured of a planted case: the maps of both pulls, and what evidence needs beside them. */
export interface RenderedMaps {
  readonly pulls: readonly Pick<EvidenceInput, 'drawn' | 'printed' | 'measured'>[];
}

/**
 * Measures a planted case with the whole engine from rendered photographs: the stone and two pulls.
 * @returns null where the engine refused a pair.
 */
export async function renderedMaps(planted: PlantedCase): Promise<RenderedMaps | null> {
  const pairs = planted.pulls.map((_, i) => renderPair(pairCase(planted, i as 0 | 1)));
  const stone = await photographed(pairs[0]!, 'stone', planted, 0);
  const stoneMap = mapOfCorners(planted.drawing.sizeMm, pairs[0]!.cornersPx('stone'))!;
  const { sizeMm, zones } = planted.drawing;
  const none = { stone: null, proof: null };
  const stoneRead = readSide(stoneSideInput({ stone, stoneMap, flats: none, zones, chips: [], sizeMm }));
  const pulls: Pick<EvidenceInput, 'drawn' | 'printed' | 'measured'>[] = [];
  for (const [i, pair] of pairs.entries()) {
    const proof = await photographed(pair, 'print', planted, i as 0 | 1);
    const registered = register({
      stone,
      proof,
      sizeMm,
      stoneCorners: pairs[0]!.cornersPx('stone'),
      proofCorners: pair.cornersPx('print'),
    });
    if (!registered.ok || registered.value.verdict !== 'ok') return null;
    const { proofMap, covered, errorMm, partial } = registered.value;
    const tone = measureTone({
      stone,
      proof,
      stoneMap,
      proofMap,
      sizeMm,
      covered,
      errorMm,
      partial,
      zones,
      chips: [],
      flats: none,
      repeats: none,
      stoneRead,
      parameters: { ...defaultParameters, sizeMm },
    });
    if (!tone?.drawn || !tone.printed) return null;
    const { warnings, strength } = tone;
    pulls.push({
      drawn: tone.drawn,
      printed: tone.printed,
      measured: { zones: tone.zones, warnings, strength },
    });
  }
  return { pulls };
}

/** Features of a planted case from what was measured. */
export function featuresFromMaps(planted: PlantedCase, { pulls }: RenderedMaps): Features {
  const both = pulls.map((pull) =>
    pictureEvidence({
      ...pull,
      zones: planted.drawing.zones,
      travel: 'down',
      rollerDiameterMm: null,
      strength: null,
    }),
  );
  return { ...both[0]!.features, ...pullChanges(both[0]!.cells, both[1]!.cells), ...planted.log };
}

async function photographed(
  pair: RenderedPair,
  name: PictureName,
  planted: PlantedCase,
  pull: 0 | 1,
): Promise<Photograph> {
  const decoded = await decodePhotograph(
    await encodePicture(pair.take(name), pairCase(planted, pull).files),
    `${name}.jpg`,
  );
  if (!decoded.ok) throw new Error(decoded.error.message);
  return decoded.value;
}

function pairCase(planted: PlantedCase, pull: 0 | 1): PairCase {
  const { transfer, zoneTransfers, damage, faults, weakPrint } = planted.pulls[pull];
  const glare = planted.photographSpoiled ? { at: [0.1, -0.1] as const, radius: 0.3, light: 0.5 } : null;
  const print = { ...plainShot, rollDegrees: -2.2 + pull, tiltXDegrees: -1.5, tiltYDegrees: 2 + pull };
  return {
    ...plainCase(`fault ${planted.seed}`, planted.seed % 1_000_000, planted.drawing),
    megapixels,
    cellsPerMm,
    transfer,
    zoneTransfers,
    damage,
    faults,
    inkReflectance: { stone: 10 ** planted.pulls[0].weakStone, print: 10 ** weakPrint },
    print: { ...print, sensor: { ...print.sensor, glare } },
    cornerErrorMm: 3,
  };
}
