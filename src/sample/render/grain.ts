import { seededRandom } from '../../foundation/random.ts';

/** Grain of a stone of about 180 grit: feature sizes in mm of the band-pass that shapes it (from memory). */
const fineSigmaMm = 0.08;
const coarseSigmaMm = 0.26;

function gaussianTaps(sigma: number, radius: number): Float64Array {
  const taps = Float64Array.from({ length: 2 * radius + 1 }, (_, i) =>
    Math.exp(-0.5 * ((i - radius) / sigma) ** 2),
  );
  const sum = taps.reduce((total, tap) => total + tap, 0);
  return taps.map((tap) => tap / sum);
}

/** Standard normal distribution function as 1024 steps over −4..4, scaled to 0..255. */
function uniformLevels(): Uint8Array {
  const levels = new Uint8Array(1024);
  let sum = 0;
  const step = 8 / 1024;
  for (let i = 0; i < 1024; i++) {
    const z = -4 + (i + 0.5) * step;
    sum += (Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)) * step;
    levels[i] = Math.min(255, Math.floor(sum * 256));
  }
  return levels;
}

/**
 * The heights of a grained stone as thresholds 0..255 with a flat histogram and little slow variation:
 * a crayon of tone t covers the cells whose threshold is below 255 t. Same seed, same grain.
 * Memory: one byte a cell; rows are made one after the other.
 */
export function grainThresholds(seed: number, columns: number, rows: number, cellsPerMm: number): Uint8Array {
  const fineSigma = fineSigmaMm * cellsPerMm;
  const coarseSigma = coarseSigmaMm * cellsPerMm;
  const radius = Math.ceil(2.6 * coarseSigma);
  const fine = gaussianTaps(fineSigma, radius);
  const coarse = gaussianTaps(coarseSigma, radius);
  const size = 2 * radius + 1;

  let variance = 0;
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) variance += (fine[y]! * fine[x]! - coarse[y]! * coarse[x]!) ** 2;
  const toIndex = 128 / Math.sqrt(variance / 12);

  const levels = uniformLevels();
  const thresholds = new Uint8Array(columns * rows);
  const fineRows = Array.from({ length: size }, () => new Float32Array(columns));
  const coarseRows = Array.from({ length: size }, () => new Float32Array(columns));
  const white = new Float32Array(columns + 2 * radius);
  const random = seededRandom(seed);
  for (let row = 0; row < rows + 2 * radius; row++) {
    for (let i = 0; i < white.length; i++) white[i] = random() - 0.5;
    const fineRow = fineRows[row % size]!;
    const coarseRow = coarseRows[row % size]!;
    for (let x = 0; x < columns; x++) {
      let a = 0;
      let b = 0;
      for (let k = 0; k < size; k++) {
        const value = white[x + k]!;
        a += fine[k]! * value;
        b += coarse[k]! * value;
      }
      fineRow[x] = a;
      coarseRow[x] = b;
    }
    const y = row - 2 * radius;
    if (y < 0) continue;
    for (let x = 0; x < columns; x++) {
      let value = 0;
      for (let k = 0; k < size; k++) {
        const source = (y + k) % size;
        value += fine[k]! * fineRows[source]![x]! - coarse[k]! * coarseRows[source]![x]!;
      }
      const index = 512 + value * toIndex;
      thresholds[y * columns + x] = levels[index < 0 ? 0 : index > 1023 ? 1023 : index | 0]!;
    }
  }
  return thresholds;
}
