import type {
  MeasureInput,
  MeasureSide,
  PhotographFile,
} from '../src/application/comparison/measureInput.ts';
import { encodePicture, fileEnding } from '../src/sample/render/encodePicture.ts';
import type { PairCase } from '../src/sample/render/pairCase.ts';
import { type PictureName, type RenderedPair, renderPair } from '../src/sample/render/renderPair.ts';
import type { Truth } from '../src/sample/render/truth.ts';
import type { TruthMaps } from '../src/sample/render/truthMaps.ts';

/**
 * What kind of drawing and photograph it is, as far as the limits differ. From a spoiled photograph (burnt out, blurred,
 * a lamp mirrored in it) only the warning is asked.
 */
export type BenchKind = 'usual' | 'scan' | 'curve without chips' | 'no change' | 'no corners' | 'spoiled';

/** A pair to be measured, with what is true of it. */
export interface BenchPair {
  readonly name: string;
  readonly kind: BenchKind;
  readonly input: MeasureInput;
  /** The same object set up and photographed again, to be measured on its own; null without one. */
  readonly again: MeasureInput | null;
  readonly truth: Truth;
  readonly maps: Pick<TruthMaps, 'columns' | 'rows' | 'lost' | 'filled' | 'scum'>;
}

/** Renders a case in memory. */
export async function renderedBenchPair(pair: PairCase, kind: BenchKind): Promise<BenchPair> {
  const rendered = renderPair(pair);
  const files = new Map<PictureName, PhotographFile>();
  for (const name of rendered.names)
    files.set(name, {
      bytes: await encodePicture(rendered.take(name), pair.files),
      fileName: `${name}.${fileEnding[pair.files.kind]}`,
    });
  return {
    name: pair.name,
    kind,
    input: inputOf(pair, rendered, files, ['stone', 'print']),
    again: pair.repeats ? inputOf(pair, rendered, files, ['stone-repeat', 'print-repeat']) : null,
    truth: rendered.truth,
    maps: rendered.maps,
  };
}

function inputOf(
  pair: PairCase,
  rendered: RenderedPair,
  files: ReadonlyMap<PictureName, PhotographFile>,
  [stone, print]: readonly [PictureName, PictureName],
): MeasureInput {
  const side = (name: PictureName): MeasureSide => ({
    ...files.get(name)!,
    corners: pair.cornersGiven ? rendered.cornersPx(name) : null,
    repeat: files.get(`${name}-repeat` as PictureName) ?? null,
    flat: files.get(`${name}-flat` as PictureName) ?? null,
  });
  return {
    stone: side(stone),
    proof: side(print),
    sizeMm: pair.drawing.sizeMm,
    zones: pair.drawing.zones,
    chips: rendered.chips,
  };
}
