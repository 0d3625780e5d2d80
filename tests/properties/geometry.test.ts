import fc from 'fast-check';
import { expect } from 'vitest';
import { outlineFault } from '../../src/science/geometry/outlineFault.ts';
import {
  centroid,
  containsPoint,
  convexHull,
  crossesItself,
  isConvex,
  signedArea,
} from '../../src/science/geometry/polygon.ts';
import { outlineDistance, sharedArea, unionArea } from '../../src/science/geometry/polygonArea.ts';
import { close, holds } from './holds.ts';
import { inTheGlass, millimetres, quadrangle, starOutline, turned } from './shapes.ts';

const angle = fc.integer({ min: 0, max: 359 }).map((degrees) => (degrees * Math.PI) / 180);

holds(
  'an outline keeps its area when it is turned and moved, and changes its sign in the glass or run backwards',
  fc.property(starOutline, angle, millimetres(-300, 300), (outline, by, shift) => {
    const area = signedArea(outline);
    close(signedArea(turned(outline, by)), area);
    close(signedArea(outline.map(([x, y]) => [x + shift, y - shift])), area);
    close(signedArea(inTheGlass(outline)), -area);
    close(signedArea(outline.toReversed()), -area);
  }),
);

holds(
  'which point comes first says nothing about area, crossing or centre',
  fc.property(starOutline, fc.nat(11), (outline, by) => {
    const first = by % outline.length;
    const other = [...outline.slice(first), ...outline.slice(0, first)];
    close(signedArea(other), signedArea(outline));
    expect(crossesItself(other)).toBe(crossesItself(outline));
    const [a, b] = [centroid(other), centroid(outline)];
    close(a[0], b[0], 1e-6);
    close(a[1], b[1], 1e-6);
  }),
);

holds(
  'an outline round a centre does not cross itself, however it is turned or mirrored',
  fc.property(starOutline, angle, (outline, by) => {
    expect(crossesItself(outline)).toBe(false);
    expect(crossesItself(turned(outline, by))).toBe(false);
    expect(crossesItself(inTheGlass(outline))).toBe(false);
    expect(outlineFault(outline, 0.01)).toBeNull();
  }),
);

holds(
  'two neighbours of a convex outline in each other’s place make it cross itself',
  fc.property(quadrangle, fc.nat(3), (corners, at) => {
    expect(isConvex(corners)).toBe(true);
    const swapped = [...corners];
    const next = (at + 1) % 4;
    [swapped[at], swapped[next]] = [corners[next]!, corners[at]!];
    expect(crossesItself(swapped)).toBe(true);
    expect(outlineFault(swapped, 0.01)).toBe('self-crossing');
  }),
);

holds(
  'the hull is convex, holds every point and is no smaller than what it holds',
  fc.property(starOutline, (outline) => {
    const hull = convexHull(outline);
    expect(isConvex(hull)).toBe(true);
    expect(signedArea(hull)).toBeGreaterThanOrEqual(Math.abs(signedArea(outline)) * (1 - 1e-9));
    for (const [x, y] of outline) {
      const [cx, cy] = centroid(hull);
      // A hair toward the middle: on the outline itself either answer is right.
      expect(containsPoint(hull, [x + (cx - x) * 1e-6, y + (cy - y) * 1e-6])).toBe(true);
    }
  }),
);

holds(
  'two outlines cover what each covers less what they share, either way round',
  fc.property(starOutline, starOutline, (a, b) => {
    const [areaA, areaB] = [Math.abs(signedArea(a)), Math.abs(signedArea(b))];
    close(unionArea([a]), areaA, 1e-6);
    const shared = sharedArea(a, b);
    close(shared, sharedArea(b, a), 1e-6);
    close(unionArea([a, b]), areaA + areaB - shared, 1e-6);
    close(unionArea([a, b]), unionArea([b, a]), 1e-6);
    expect(shared).toBeLessThanOrEqual(Math.min(areaA, areaB) * (1 + 1e-6));
    close(outlineDistance(a, b), outlineDistance(b, a));
    if (shared > 1e-3) expect(outlineDistance(a, b)).toBe(0);
  }),
);
