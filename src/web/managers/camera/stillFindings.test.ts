import { expect, test } from 'vitest';
import { type StillReading, stillFindings } from './stillFindings.ts';

const good: StillReading = {
  widthPx: 4000,
  heightPx: 3000,
  exposure: { whites: 0, blacks: 0, leftPercent: 0, headPercent: 0, glare: 0 },
  fineShare: 0.5,
  variance: 500,
};

test('a sharp, level, even photograph has nothing found against it', () => {
  expect(stillFindings(good, null, null)).toEqual({
    light: [],
    sharpness: 'sharp',
    tiltDegrees: null,
    tilted: false,
    clean: true,
  });
});

test('soft by itself, and soft beside a sharper one', () => {
  expect(stillFindings({ ...good, fineShare: 0.1 }, null, null).sharpness).toBe('soft');
  expect(stillFindings({ ...good, variance: 200 }, 500, null).sharpness).toBe('softer-than-before');
  expect(stillFindings({ ...good, variance: 400 }, 500, null).clean).toBe(true);
});

test('where nothing is drawn sharpness is unknown, and held against nobody', () => {
  expect(stillFindings({ ...good, fineShare: null }, 500, 1)).toMatchObject({
    sharpness: 'unknown',
    clean: true,
  });
});

test('tilt at the moment it was taken', () => {
  expect(stillFindings(good, null, 6)).toMatchObject({ tilted: true, clean: false });
});
