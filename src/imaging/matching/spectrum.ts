import FFT from 'fft.js';

/**
 * Two-dimensional discrete Fourier transforms of one square size, with their working memory.
 * Grids are interleaved complex numbers, row by row: real part at `2 * (y * size + x)`.
 */
export interface Spectrum {
  readonly size: number;
  /** Transforms in place. The result is transposed: index (row, column) holds frequency (x = row, y = column). */
  forward(grid: Float64Array): void;
  /** Undoes `forward`, transposition included, with the factor 1 / size². */
  inverse(grid: Float64Array): void;
}

function transpose(grid: Float64Array, size: number): void {
  for (let row = 0; row < size; row++) {
    for (let column = row + 1; column < size; column++) {
      const a = 2 * (row * size + column);
      const b = 2 * (column * size + row);
      const real = grid[a]!;
      const imaginary = grid[a + 1]!;
      grid[a] = grid[b]!;
      grid[a + 1] = grid[b + 1]!;
      grid[b] = real;
      grid[b + 1] = imaginary;
    }
  }
}

/** @param size a power of two, at least 4. */
export function createSpectrum(size: number): Spectrum {
  const transform = new FFT(size);
  const line = new Float64Array(2 * size);
  const rows = (grid: Float64Array, backwards: boolean): void => {
    for (let row = 0; row < size; row++) {
      const view = grid.subarray(2 * row * size, 2 * (row + 1) * size);
      if (backwards) transform.inverseTransform(line as unknown as number[], view as unknown as number[]);
      else transform.transform(line as unknown as number[], view as unknown as number[]);
      view.set(line);
    }
  };
  return {
    size,
    forward(grid) {
      rows(grid, false);
      transpose(grid, size);
      rows(grid, false);
    },
    inverse(grid) {
      rows(grid, true);
      transpose(grid, size);
      rows(grid, true);
    },
  };
}
