import type { CameraFrame } from './cameraFrame.ts';
import { greyOf } from './cameraFrame.ts';

/** A frame made small: mean grey 0..255 of square blocks, by which two frames are compared. */
export interface SmallFrame {
  readonly columns: number;
  readonly rows: number;
  readonly grey: Float32Array;
}

/** Side of a block: the share of a frame's longer side that one block takes. */
const blockShare = 1 / 64;

/** Makes a frame small. */
export function smallFrame(frame: CameraFrame): SmallFrame {
  const grey = greyOf(frame);
  const block = Math.max(1, Math.round(Math.max(frame.widthPx, frame.heightPx) * blockShare));
  const columns = Math.max(1, Math.floor(frame.widthPx / block));
  const rows = Math.max(1, Math.floor(frame.heightPx / block));
  const small = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      let sum = 0;
      for (let y = row * block; y < (row + 1) * block; y++)
        for (let x = column * block; x < (column + 1) * block; x++) sum += grey[y * frame.widthPx + x] ?? 0;
      small[row * columns + column] = sum / block ** 2;
    }
  return { columns, rows, grey: small };
}

/**
 * How much changed from one small frame to the next: mean absolute difference in grey levels of 255, each frame's own
 * mean taken off first, so that a camera that mends its exposure does not count as moved. Infinity where the two
 * differ in size.
 */
export function frameChange(before: SmallFrame, after: SmallFrame): number {
  if (before.columns !== after.columns || before.rows !== after.rows) return Number.POSITIVE_INFINITY;
  const shift = meanOf(after.grey) - meanOf(before.grey);
  let sum = 0;
  for (let i = 0; i < before.grey.length; i++) sum += Math.abs(after.grey[i]! - before.grey[i]! - shift);
  return sum / before.grey.length;
}

/** What the device's motion sensor told last; null where it tells nothing. */
export interface DeviceMotion {
  /** Degrees a second about whichever axis. */
  readonly turning: number | null;
  /** m/s², gravity taken off. */
  readonly pushing: number | null;
}

function meanOf(values: Float32Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
