import { ok, type Result } from '../../foundation/result.ts';
import { decodePhotograph } from '../../imaging/codecs/decodePhotograph.ts';
import type { Photograph } from '../../imaging/photograph.ts';
import type { MeasureInput, PhotographFile } from './measureInput.ts';

/** Every photograph of a comparison, decoded; the four extra ones only where they were given. */
export interface DecodedPhotographs {
  readonly stone: Photograph;
  readonly proof: Photograph;
  readonly repeats: { readonly stone: Photograph | null; readonly proof: Photograph | null };
  readonly flats: { readonly stone: Photograph | null; readonly proof: Photograph | null };
}

/** Decodes both photographs at once and the extra ones after them; the first failure ends it. */
export async function decodeAll(input: MeasureInput): Promise<Result<DecodedPhotographs>> {
  const [stone, proof] = await Promise.all([decode(input.stone), decode(input.proof)]);
  if (!stone.ok) return stone;
  if (!proof.ok) return proof;
  const extras: (Photograph | null)[] = [];
  for (const file of [input.stone.repeat, input.proof.repeat, input.stone.flat, input.proof.flat]) {
    const decoded = file ? await decode(file) : ok(null);
    if (!decoded.ok) return decoded;
    extras.push(decoded.value);
  }
  const [stoneRepeat, proofRepeat, stoneFlat, proofFlat] = extras as [
    Photograph | null,
    Photograph | null,
    Photograph | null,
    Photograph | null,
  ];
  return ok({
    stone: stone.value,
    proof: proof.value,
    repeats: { stone: stoneRepeat, proof: proofRepeat },
    flats: { stone: stoneFlat, proof: proofFlat },
  });
}

function decode(file: PhotographFile): Promise<Result<Photograph>> {
  return decodePhotograph(file.bytes, file.fileName);
}
