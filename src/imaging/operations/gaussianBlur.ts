/** Half width of a Gaussian kernel in standard deviations: what lies beyond is below 0.3 %. */
const reach = 3;

/** Weights of a Gaussian from the centre outwards, summing to 1 over both sides; only the centre for σ 0. */
function gaussianKernel(sigmaPx: number): Float32Array {
  const radius = Math.ceil(sigmaPx * reach);
  const weights = Float32Array.from({ length: radius + 1 }, (_, i) =>
    sigmaPx > 0 ? Math.exp((-i * i) / (2 * sigmaPx * sigmaPx)) : 1,
  );
  const sum = weights.reduce((all, weight, i) => all + (i === 0 ? weight : 2 * weight), 0);
  return weights.map((weight) => weight / sum);
}

/**
 * Gaussian blur of a plane without gaps, row by row; beyond the edges the plane counts as zero.
 * @param plane `width × height` values; NaN spreads, so fill gaps with zero and see `blurWithin`.
 * @param sigmaPx standard deviation in px, 0 or more.
 */
export function gaussianBlur(
  plane: Float32Array,
  width: number,
  height: number,
  sigmaPx: number,
): Float32Array {
  const kernel = gaussianKernel(sigmaPx);
  const radius = kernel.length - 1;
  const across = new Float32Array(plane.length);
  const padded = new Float32Array(width + 2 * radius);
  for (let y = 0; y < height; y++) {
    padded.set(plane.subarray(y * width, (y + 1) * width), radius);
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const centre = x + radius;
      let sum = kernel[0]! * padded[centre]!;
      for (let k = 1; k <= radius; k++) sum += kernel[k]! * (padded[centre - k]! + padded[centre + k]!);
      across[row + x] = sum;
    }
  }
  const out = new Float32Array(plane.length);
  for (let y = 0; y < height; y++) {
    const target = out.subarray(y * width, (y + 1) * width);
    for (let k = -radius; k <= radius; k++) {
      const from = y + k;
      if (from < 0 || from >= height) continue;
      const weight = kernel[Math.abs(k)]!;
      const source = across.subarray(from * width, (from + 1) * width);
      for (let x = 0; x < width; x++) target[x]! += weight * source[x]!;
    }
  }
  return out;
}

/**
 * Gaussian blur that counts only places with a weight: Σ(w·v) / Σw.
 * @param weights 0..1 per place; values where the weight is 0 may be NaN.
 * @returns the blurred values, NaN where less than `least` of the kernel's weight lies on counted places, and that weight.
 */
export function blurWithin(
  values: Float32Array,
  weights: Float32Array,
  width: number,
  height: number,
  sigmaPx: number,
  least: number,
): { readonly values: Float32Array; readonly weights: Float32Array } {
  const weighted = new Float32Array(values.length);
  for (let i = 0; i < values.length; i++) weighted[i] = weights[i]! > 0 ? values[i]! * weights[i]! : 0;
  const sums = gaussianBlur(weighted, width, height, sigmaPx);
  const counts = gaussianBlur(weights, width, height, sigmaPx);
  for (let i = 0; i < sums.length; i++) sums[i] = counts[i]! >= least ? sums[i]! / counts[i]! : Number.NaN;
  return { values: sums, weights: counts };
}
