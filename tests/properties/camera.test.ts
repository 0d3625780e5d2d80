import fc from 'fast-check';
import { expect } from 'vitest';
import type { CameraFrame } from '../../src/web/managers/camera/cameraFrame.ts';
import { wholeFrame } from '../../src/web/managers/camera/cameraFrame.ts';
import { exposureOf } from '../../src/web/managers/camera/exposure.ts';
import { boxInFrame, guideBox } from '../../src/web/managers/camera/guideBox.ts';
import { tiltOf } from '../../src/web/managers/camera/levelTilt.ts';
import { laplacianVariance } from '../../src/web/managers/camera/sharpness.ts';
import { frameChange, smallFrame } from '../../src/web/managers/camera/stillness.ts';
import { close, holds } from './holds.ts';
import { millimetres } from './shapes.ts';

const side = fc.integer({ min: 3, max: 40 });
const frame: fc.Arbitrary<CameraFrame> = fc.tuple(side, side).chain(([widthPx, heightPx]) =>
  fc
    .array(fc.integer({ min: 0, max: 255 }), {
      minLength: widthPx * heightPx,
      maxLength: widthPx * heightPx,
    })
    .map((codes) => ({
      widthPx,
      heightPx,
      rgba: Uint8ClampedArray.from(codes.flatMap((code) => [code, code, code, 255])),
    })),
);
const angles = fc.record({
  beta: fc.integer({ min: -180, max: 180 }),
  gamma: fc.integer({ min: -89, max: 89 }),
});

/** A frame with every code put through `change`, or turned left to right. */
function changed({ widthPx, heightPx, rgba }: CameraFrame, change: (code: number) => number): CameraFrame {
  return { widthPx, heightPx, rgba: rgba.map((code, i) => (i % 4 === 3 ? code : change(code))) };
}

function mirrored({ widthPx, heightPx, rgba }: CameraFrame): CameraFrame {
  const turned = rgba.map((_, i) => {
    const [pixel, channel] = [Math.floor(i / 4), i % 4];
    const [x, y] = [pixel % widthPx, Math.floor(pixel / widthPx)];
    return rgba[4 * (y * widthPx + (widthPx - 1 - x)) + channel]!;
  });
  return { widthPx, heightPx, rgba: turned };
}

holds(
  'shares of light stay shares, and a mirrored view swaps left and right alone',
  fc.property(frame, (seen) => {
    const one = exposureOf(seen, wholeFrame(seen));
    const other = exposureOf(mirrored(seen), wholeFrame(seen));
    for (const share of [one.whites, one.blacks, one.glare]) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    expect(one.whites + one.blacks).toBeLessThanOrEqual(1 + 1e-12);
    close(one.leftPercent, -other.leftPercent);
    close(one.headPercent, other.headPercent);
    close(one.whites, other.whites);
  }),
);

holds(
  'the variance of the Laplacian goes with the square of contrast, and not with light',
  fc.property(
    frame.map((seen) => changed(seen, (code) => code / 4)),
    fc.integer({ min: 0, max: 100 }),
    (seen, lift) => {
      const box = wholeFrame(seen);
      const plain = laplacianVariance(seen, box);
      close(
        laplacianVariance(
          changed(seen, (code) => code + lift),
          box,
        ),
        plain,
        1e-4,
      );
      close(
        laplacianVariance(
          changed(seen, (code) => 2 * code),
          box,
        ),
        4 * plain,
        1e-4,
      );
    },
  ),
);

holds(
  'a still view has not changed, nor one in other light; change is the same both ways round',
  fc.property(frame, frame, fc.integer({ min: 0, max: 100 }), (a, b, lift) => {
    const dim = changed(a, (code) => code / 2);
    const [small, other] = [smallFrame(a), smallFrame(b)];
    expect(frameChange(small, small)).toBe(0);
    expect(frameChange(smallFrame(dim), smallFrame(changed(dim, (code) => code + lift)))).toBeLessThan(1e-3);
    const there = frameChange(small, other);
    expect(there).toBeGreaterThanOrEqual(0);
    if (Number.isFinite(there)) close(there, frameChange(other, small), 1e-4);
  }),
);

holds(
  'the guide has the object’s proportion, lies in the middle and inside, and touches its room',
  fc.property(
    millimetres(20, 3000),
    millimetres(20, 3000),
    side,
    side,
    (widthMm, heightMm, width, height) => {
      const view = [100 * width, 100 * height] as const;
      const { left, top, width: across, height: down, turned } = guideBox(view, [widthMm, heightMm]);
      const proportion = (across * view[0]) / (down * view[1]);
      close(proportion, turned ? heightMm / widthMm : widthMm / heightMm, 1e-6);
      close(2 * left + across, 1);
      close(2 * top + down, 1);
      expect(Math.max(across, down)).toBeCloseTo(0.86, 9);
      const box = boxInFrame(
        { left, top, width: across, height: down, turned },
        { widthPx: 480, heightPx: 360 },
      );
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeGreaterThan(box.left);
      expect(box.bottom).toBeGreaterThan(box.top);
      expect(box.right).toBeLessThanOrEqual(480);
      expect(box.bottom).toBeLessThanOrEqual(360);
    },
  ),
);

holds(
  'tilt is the same to either side, however the screen is turned; a wall knows no swing to the side',
  fc.property(angles, fc.constantFrom(0, 90, 180, 270), ({ beta, gamma }, screenTurn) => {
    const { degrees, right, up } = tiltOf({ beta, gamma }, 'lying', screenTurn);
    expect(degrees).toBeGreaterThanOrEqual(0);
    expect(degrees).toBeLessThanOrEqual(180);
    close(tiltOf({ beta: -beta, gamma: -gamma }, 'lying').degrees, degrees, 1e-6);
    // what the two edges tell together is how far the screen is from facing the sky
    close(Math.hypot(right, up), Math.sin((degrees * Math.PI) / 180), 1e-6);
    const wall = tiltOf({ beta, gamma }, 'upright', screenTurn);
    close(wall.degrees, Math.abs(90 - degrees), 1e-6);
    expect(wall.right).toBe(0);
  }),
);
