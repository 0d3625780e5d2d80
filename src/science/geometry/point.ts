/** A point or vector in the plane; the name of whatever holds it says the space: `stoneMm`, `proofPx`. */
export type Point = readonly [x: number, y: number];

/** Four corners, clockwise from top left as one looks at the object: TL, TR, BR, BL. */
export type Corners = readonly [Point, Point, Point, Point];
