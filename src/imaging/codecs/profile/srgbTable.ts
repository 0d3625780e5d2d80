import { srgbToLinear } from '../../../science/colour/srgbTransfer.ts';

/** Linear light of every sRGB code: 256 entries for 8 bits, 65,536 for 16. */
export function srgbTable(bits: 8 | 16): Float32Array {
  const top = bits === 8 ? 255 : 65535;
  return Float32Array.from({ length: top + 1 }, (_, code) => srgbToLinear(code / top));
}
