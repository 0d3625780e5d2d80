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

/** A grid pooled by this factor before blurring keeps at least this many pooled px to the σ. */
const leastPooledSigma = 4;

/**
 * Gaussian blur that counts only places with a weight: Σ(w·v) / Σw, for several planes under the same weights.
 * Wide blurs are taken on a pooled grid and spread back bilinearly.
 * @param planes values; where the weight is 0 they may be NaN.
 * @param weights 0..1 per place.
 * @returns for each plane the blurred values, NaN where less than `least` of the kernel's weight lies on counted places; and that weight.
 */
export function blurWithin(
  planes: readonly Float32Array[],
  weights: Float32Array,
  width: number,
  height: number,
  sigmaPx: number,
  least: number,
): { readonly values: Float32Array[]; readonly weights: Float32Array } {
  const factor = Math.max(1, Math.floor(sigmaPx / leastPooledSigma));
  const blur = (plane: Float32Array) => pooledBlur(plane, width, height, sigmaPx, factor);
  const counts = blur(weights);
  const values = planes.map((plane) => {
    const weighted = plane.map((value, i) => (weights[i]! > 0 ? value * weights[i]! : 0));
    const sums = blur(weighted);
    for (let i = 0; i < sums.length; i++) sums[i] = counts[i]! >= least ? sums[i]! / counts[i]! : Number.NaN;
    return sums;
  });
  return { values, weights: counts };
}

function pooledBlur(
  plane: Float32Array,
  width: number,
  height: number,
  sigmaPx: number,
  factor: number,
): Float32Array {
  if (factor === 1) return gaussianBlur(plane, width, height, sigmaPx);
  const columns = Math.ceil(width / factor);
  const rows = Math.ceil(height / factor);
  const pooled = new Float32Array(columns * rows);
  for (let y = 0; y < height; y++) {
    const row = Math.floor(y / factor) * columns;
    for (let x = 0; x < width; x++) pooled[row + Math.floor(x / factor)]! += plane[y * width + x]!;
  }
  const blurred = gaussianBlur(pooled, columns, rows, sigmaPx / factor);
  const out = new Float32Array(plane.length);
  const share = 1 / (factor * factor);
  for (let y = 0; y < height; y++) {
    const v = Math.min(Math.max((y + 0.5) / factor - 0.5, 0), rows - 1);
    const top = Math.min(Math.floor(v), Math.max(0, rows - 2));
    const down = v - top;
    const below = Math.min(rows - 1, top + 1) * columns;
    for (let x = 0; x < width; x++) {
      const u = Math.min(Math.max((x + 0.5) / factor - 0.5, 0), columns - 1);
      const left = Math.min(Math.floor(u), Math.max(0, columns - 2));
      const right = Math.min(columns - 1, left + 1);
      const across = u - left;
      const upper = blurred[top * columns + left]! * (1 - across) + blurred[top * columns + right]! * across;
      const lower = blurred[below + left]! * (1 - across) + blurred[below + right]! * across;
      out[y * width + x] = (upper * (1 - down) + lower * down) * share;
    }
  }
  return out;
}
