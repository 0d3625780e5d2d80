import { expect, it } from 'vitest';
import { requestTimeoutMs } from '../../server/limits.ts';
import { firstPieceBytes, nextPieceBytes } from './pieceSize.ts';

it('a piece goes in about twenty seconds, whatever the line', () => {
  expect(nextPieceBytes(128_000, 10)).toBe(1_000_000);
  expect(nextPieceBytes(128_000, 0)).toBe(1_000_000);
  expect(nextPieceBytes(128_000, 8_000), '16 kB/s').toBe(320_000);
  expect(nextPieceBytes(128_000, 128_000), '1 kB/s').toBe(32_000);
});

it('at 1 kB/s no piece takes so long that the server lets go of it', () => {
  expect(firstPieceBytes).toBeLessThan(requestTimeoutMs / 2);
  expect(nextPieceBytes(firstPieceBytes, firstPieceBytes)).toBeLessThan(requestTimeoutMs / 2);
});
