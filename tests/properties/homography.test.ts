import fc from 'fast-check';
import { expect } from 'vitest';
import {
  applyHomography,
  composeHomographies,
  homographyFromPoints,
  invertHomography,
  jacobianDeterminant,
} from '../../src/science/geometry/homography.ts';
import type { Corners, Point } from '../../src/science/geometry/point.ts';
import { cornerTrouble, foundOnPrint, handedOn, mirrored } from '../../src/web/managers/cornerMarks.ts';
import { close, holds } from './holds.ts';
import { pointMm, quadrangle } from './shapes.ts';

const rectangle: Corners = [
  [0, 0],
  [400, 0],
  [400, 500],
  [0, 500],
];
const middle: Point = [200, 250];

function same(a: Point, b: Point, share = 1e-7): void {
  close(a[0], b[0], share);
  close(a[1], b[1], share);
}

holds(
  'four corners are carried onto four corners, and every place comes back',
  fc.property(quadrangle, pointMm, (corners, place) => {
    const there = homographyFromPoints(rectangle, corners)!;
    for (const [i, corner] of rectangle.entries()) same(applyHomography(there, corner), corners[i]!);
    const back = invertHomography(there)!;
    same(applyHomography(back, applyHomography(there, place)), place);
    const alsoBack = homographyFromPoints(corners, rectangle)!;
    same(applyHomography(alsoBack, applyHomography(there, place)), place);
  }),
);

holds(
  'more points of one map give the same map',
  fc.property(quadrangle, fc.array(pointMm, { minLength: 4, maxLength: 20 }), (corners, places) => {
    const there = homographyFromPoints(rectangle, corners)!;
    const from = [...rectangle, ...places];
    const again = homographyFromPoints(
      from,
      from.map((place) => applyHomography(there, place)),
    )!;
    for (const place of places) same(applyHomography(again, place), applyHomography(there, place), 1e-6);
  }),
);

holds(
  'one map after another is the one map made of both, and undoing runs backwards',
  fc.property(quadrangle, quadrangle, pointMm, (a, b, place) => {
    const first = homographyFromPoints(rectangle, a)!;
    const second = homographyFromPoints(a, b)!;
    const both = composeHomographies(second, first);
    same(applyHomography(both, place), applyHomography(second, applyHomography(first, place)), 1e-6);
    const undone = composeHomographies(invertHomography(first)!, invertHomography(second)!);
    same(applyHomography(undone, applyHomography(both, place)), place, 1e-6);
  }),
);

holds(
  'mirroring twice is nothing, four quarter turns are nothing, and a turn in the glass runs the other way',
  fc.property(quadrangle, (corners) => {
    expect(mirrored(mirrored(corners))).toEqual(corners);
    expect(handedOn(handedOn(handedOn(handedOn(corners))))).toEqual(corners);
    expect(mirrored(handedOn(mirrored(handedOn(corners))))).toEqual(corners);
  }),
);

holds(
  'a print turned anyhow keeps its order where the mark with the F is seen, and is taken to lie upright where it is not',
  fc.property(quadrangle, fc.nat({ max: 3 }), (asSeen, turns) => {
    let onPrint = mirrored(asSeen);
    for (let turn = 0; turn < turns; turn++) onPrint = handedOn(onPrint);
    // found clockwise as seen, which on a print runs against the stone's order
    const found: Corners = [onPrint[0], onPrint[3], onPrint[2], onPrint[1]];
    expect(foundOnPrint(found, true)).toEqual(onPrint);
    expect(foundOnPrint(asSeen, false)).toEqual(mirrored(asSeen));
  }),
);

holds(
  'the eight ways to lay a rectangle are eight, mirrored ones tell by the sign of their area, none is in trouble',
  fc.property(quadrangle, (corners) => {
    const turns = [corners];
    for (let turn = 1; turn < 4; turn++) turns.push(handedOn(turns.at(-1)!));
    const all = [...turns, ...turns.map(mirrored)];
    expect(new Set(all.map((one) => JSON.stringify(one))).size).toBe(8);
    for (const [i, one] of all.entries()) {
      const map = homographyFromPoints(rectangle, one)!;
      expect(jacobianDeterminant(map, middle) < 0).toBe(i >= 4);
      expect(cornerTrouble(one)).toBeNull();
    }
  }),
);
