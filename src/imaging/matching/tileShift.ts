import { createSpectrum } from './spectrum.ts';
import { threeQuarterMagnitude } from './whitening.ts';

/** What two tiles say of the shift between them, in tile px. */
export interface TileShift {
  /** What lies at x in the first tile lies at x + shift in the second. */
  readonly dx: number;
  readonly dy: number;
  /** Predicted variances of the shift in px², along x and along y, from peak, curvature and noise of the correlation. */
  readonly varianceX: number;
  readonly varianceY: number;
  /** Height of the peak over the root mean square of the rest of the surface. */
  readonly sharpness: number;
}

/** Measures the shift between square tiles of two rasters of the same width. */
export type TileMatcher = (
  first: Float32Array,
  second: Float32Array,
  rasterWidth: number,
  left: number,
  top: number,
) => TileShift | null;

/**
 * Squared frequency, in turns per tile, below which nothing is believed: unevenness of the light, which whitening would raise
 * and which lies still while the drawing moves.
 */
const leastFrequency = 6;

/** Largest share of a tile that may lie outside either photograph. */
const mostMissing = 0.25;

/**
 * Makes a matcher by partly whitened correlation: the cross spectrum over its magnitude to the power 3/4, times a
 * Gaussian low-pass, is a surface whose highest place near zero is found on whole pixels and then exactly, by Newton's
 * method on the trigonometric sum itself, so that no interpolating curve biases it. (Whitened correlation: Knapp, C. H. &
 * Carter, G. C. (1976), IEEE Trans. ASSP 24(4), doi 10.1109/TASSP.1976.1162830.)
 *
 * The variance is that of the place of a maximum in noise: H⁻¹ N H⁻¹, H the curvature at the peak and N the second moment of
 * the noise's slope, both summed in the frequency domain; so a tile of parallel lines is uncertain along them.
 * @param size tile side in px, a power of two
 * @param radius largest shift looked for, px
 * @param blurPx σ of the low-pass, px
 */
export function createTileMatcher(size: number, radius: number, blurPx: number): TileMatcher {
  const spectrum = createSpectrum(size);
  const grid = new Float64Array(2 * size * size);
  const taper = Float64Array.from(
    { length: size },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / size),
  );
  const reach = Math.min(size / 2 - 1, Math.ceil((size * 2.6) / (2 * Math.PI * blurPx)));
  const lowPass = Float64Array.from({ length: reach + 1 }, (_, k) =>
    Math.exp(-0.5 * ((2 * Math.PI * k * blurPx) / size) ** 2),
  );
  const columns = 2 * reach + 1;
  const crossReal = new Float64Array((reach + 1) * columns);
  const crossImaginary = new Float64Array((reach + 1) * columns);
  const span = 2 * radius + 1;
  const rowReal = new Float64Array(columns * span);
  const rowImaginary = new Float64Array(columns * span);
  const surface = new Float64Array(span * span);
  const angle = (2 * Math.PI) / size;
  const cosines = Float64Array.from({ length: size }, (_, i) => Math.cos(angle * i));
  const sines = Float64Array.from({ length: size }, (_, i) => Math.sin(angle * i));

  /** Fills the packed grid with both tiles, tapered and without their means; false where too much is missing. */
  const load = (
    first: Float32Array,
    second: Float32Array,
    width: number,
    left: number,
    top: number,
  ): boolean => {
    let sumFirst = 0;
    let sumSecond = 0;
    let weightFirst = 0;
    let weightSecond = 0;
    let missing = 0;
    for (let y = 0; y < size; y++) {
      const start = (top + y) * width + left;
      for (let x = 0; x < size; x++) {
        const a = first[start + x]!;
        const b = second[start + x]!;
        const weight = taper[x]! * taper[y]!;
        if (!Number.isNaN(a)) {
          sumFirst += weight * a;
          weightFirst += weight;
        }
        if (!Number.isNaN(b)) {
          sumSecond += weight * b;
          weightSecond += weight;
        }
        if (Number.isNaN(a) || Number.isNaN(b)) missing++;
      }
    }
    if (missing > mostMissing * size * size) return false;
    const meanFirst = sumFirst / weightFirst;
    const meanSecond = sumSecond / weightSecond;
    for (let y = 0, at = 0; y < size; y++) {
      const start = (top + y) * width + left;
      for (let x = 0; x < size; x++, at += 2) {
        const a = first[start + x]!;
        const b = second[start + x]!;
        const weight = taper[x]! * taper[y]!;
        grid[at] = !Number.isNaN(a) ? weight * (a - meanFirst) : 0;
        grid[at + 1] = !Number.isNaN(b) ? weight * (b - meanSecond) : 0;
      }
    }
    return true;
  };

  /** Half the whitened cross spectrum (x frequency ≥ 0) into crossReal and crossImaginary. */
  const cross = (): void => {
    const mask = size - 1;
    for (let kx = 0; kx <= reach; kx++) {
      for (let j = 0; j < columns; j++) {
        const ky = j - reach;
        const at = 2 * (kx * size + (ky & mask));
        const opposite = 2 * (((size - kx) & mask) * size + (-ky & mask));
        const zr = grid[at]!;
        const zi = grid[at + 1]!;
        const or = grid[opposite]!;
        const oi = -grid[opposite + 1]!;
        const ar = zr + or;
        const ai = zi + oi;
        const br = zi - oi;
        const bi = or - zr;
        const real = ar * br + ai * bi;
        const imaginary = ar * bi - ai * br;
        const power = real * real + imaginary * imaginary;
        const twice = kx === 0 ? 0.5 : 1;
        const seen = power > 0 && kx * kx + ky * ky >= leastFrequency;
        const gain = seen
          ? (twice * lowPass[kx]! * lowPass[Math.abs(ky)]!) / threeQuarterMagnitude(power)
          : 0;
        crossReal[kx * columns + j] = real * gain;
        crossImaginary[kx * columns + j] = imaginary * gain;
      }
    }
  };

  /** The highest place of the surface on whole pixels within the radius. */
  const wholePixelPeak = (): [number, number] => {
    const mask = size - 1;
    rowReal.fill(0);
    rowImaginary.fill(0);
    for (let kx = 0; kx <= reach; kx++) {
      for (let s = 0; s < span; s++) {
        const phase = (kx * (s - radius)) & mask;
        const c = cosines[phase]!;
        const d = sines[phase]!;
        for (let j = 0; j < columns; j++) {
          const real = crossReal[kx * columns + j]!;
          const imaginary = crossImaginary[kx * columns + j]!;
          rowReal[s * columns + j]! += real * c - imaginary * d;
          rowImaginary[s * columns + j]! += real * d + imaginary * c;
        }
      }
    }
    let best = Number.NEGATIVE_INFINITY;
    let bestX = 0;
    let bestY = 0;
    for (let s = 0; s < span; s++) {
      for (let t = 0; t < span; t++) {
        let sum = 0;
        for (let j = 0; j < columns; j++) {
          const phase = ((j - reach) * (t - radius)) & mask;
          sum += rowReal[s * columns + j]! * cosines[phase]! - rowImaginary[s * columns + j]! * sines[phase]!;
        }
        surface[s * span + t] = sum;
        if (sum > best) {
          best = sum;
          bestX = s - radius;
          bestY = t - radius;
        }
      }
    }
    return [bestX, bestY];
  };

  return (first, second, rasterWidth, left, top) => {
    if (!load(first, second, rasterWidth, left, top)) return null;
    spectrum.forward(grid);
    cross();
    let [dx, dy] = wholePixelPeak();
    const startX = dx;
    const startY = dy;
    let height = 0;
    let hxx = 0;
    let hxy = 0;
    let hyy = 0;
    for (let round = 0; round < 4; round++) {
      height = 0;
      hxx = 0;
      hxy = 0;
      hyy = 0;
      let gx = 0;
      let gy = 0;
      const stepReal = Math.cos(angle * dy);
      const stepImaginary = Math.sin(angle * dy);
      for (let kx = 0; kx <= reach; kx++) {
        const phase = angle * (kx * dx - reach * dy);
        let c = Math.cos(phase);
        let d = Math.sin(phase);
        let sum = 0;
        let slope = 0;
        let sumY = 0;
        let slopeY = 0;
        let sumYy = 0;
        for (let j = 0, at = kx * columns; j < columns; j++, at++) {
          const real = crossReal[at]!;
          const imaginary = crossImaginary[at]!;
          const even = real * c - imaginary * d;
          const odd = real * d + imaginary * c;
          const ky = j - reach;
          sum += even;
          slope += odd;
          sumY += ky * even;
          slopeY += ky * odd;
          sumYy += ky * ky * even;
          const next = c * stepReal - d * stepImaginary;
          d = c * stepImaginary + d * stepReal;
          c = next;
        }
        height += sum;
        gx -= kx * slope;
        gy -= slopeY;
        hxx += kx * kx * sum;
        hxy += kx * sumY;
        hyy += sumYy;
      }
      const determinant = hxx * hyy - hxy * hxy;
      if (!(hxx > 0 && hyy > 0 && determinant > 1e-9 * hxx * hyy)) return null;
      const moveX = (hyy * gx - hxy * gy) / determinant / angle;
      const moveY = (hxx * gy - hxy * gx) / determinant / angle;
      dx += Math.max(-0.7, Math.min(0.7, moveX));
      dy += Math.max(-0.7, Math.min(0.7, moveY));
      if (Math.abs(dx - startX) > 1.5 || Math.abs(dy - startY) > 1.5) return null;
      if (Math.abs(moveX) + Math.abs(moveY) < 1e-3) break;
    }
    let energy = 0;
    let nxx = 0;
    let nxy = 0;
    let nyy = 0;
    for (let kx = 0; kx <= reach; kx++) {
      for (let j = 0, at = kx * columns; j < columns; j++, at++) {
        const ky = j - reach;
        const power = (crossReal[at]! ** 2 + crossImaginary[at]! ** 2) * (kx === 0 ? 2 : 1);
        energy += power;
        nxx += power * kx * kx;
        nxy += power * kx * ky;
        nyy += power * ky * ky;
      }
    }
    // The surface is 2 Re Σ over the half plane, so its mean square is 2 Σ |G|² and its value 2 Σ Re.
    const determinant = hxx * hyy - hxy * hxy;
    const widthSquared = height / Math.sqrt(determinant) / (angle * angle);
    const meanSquare = energy / 2;
    const peakSquare = (height * height * Math.PI * widthSquared) / (size * size);
    const restShare = Math.max(0.02, 1 - peakSquare / meanSquare);
    const scale = (0.5 * restShare) / (determinant * determinant * angle * angle);
    return {
      dx,
      dy,
      varianceX: scale * (hyy * hyy * nxx - 2 * hxy * hyy * nxy + hxy * hxy * nyy),
      varianceY: scale * (hxx * hxx * nyy - 2 * hxy * hxx * nxy + hxy * hxy * nxx),
      sharpness: height / Math.sqrt(restShare * meanSquare),
    };
  };
}
