import type { Point } from '../../science/geometry/point.ts';

/** A camera over a flat object: where it stands, how it is turned, and how its lens bends. */
export interface CameraPose {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Scale at the picture's middle. */
  readonly pxPerMm: number;
  readonly distanceMm: number;
  /** Plane mm that the picture's middle looks at. */
  readonly centreMm: Point;
  readonly rollDegrees: number;
  readonly tiltXDegrees: number;
  readonly tiltYDegrees: number;
  /** Radial bend at half the diagonal, as a share of the radius (barrel below 0 as seen from the ideal picture). */
  readonly lensBend: number;
}

export interface Camera {
  readonly pose: CameraPose;
  /** Plane mm to photograph px (pixel centres at +0.5), lens bend included. */
  toPx(planeMm: Point): Point;
  /** Photograph px to plane mm. */
  toPlaneMm(px: Point): Point;
}

/** A pinhole camera with one radial term: ideal = seen · (1 + bend · r²), r in half diagonals from the middle. */
export function camera(pose: CameraPose): Camera {
  const rotation = rotationMatrix(pose);
  const focal = pose.pxPerMm * pose.distanceMm;
  const middle: Point = [pose.widthPx / 2, pose.heightPx / 2];
  const halfDiagonal = Math.hypot(...middle);

  const idealOf = (planeMm: Point): Point => {
    const x = planeMm[0] - pose.centreMm[0];
    const y = planeMm[1] - pose.centreMm[1];
    const depth = rotation[6]! * x + rotation[7]! * y + pose.distanceMm;
    return [
      (focal * (rotation[0]! * x + rotation[1]! * y)) / depth,
      (focal * (rotation[3]! * x + rotation[4]! * y)) / depth,
    ];
  };

  return {
    pose,
    toPx(planeMm) {
      const ideal = idealOf(planeMm);
      let [x, y] = ideal;
      for (let i = 0; i < 20; i++) {
        const factor = 1 + pose.lensBend * ((x * x + y * y) / halfDiagonal ** 2);
        x = ideal[0] / factor;
        y = ideal[1] / factor;
      }
      return [x + middle[0], y + middle[1]];
    },
    toPlaneMm(px) {
      const dx = px[0] - middle[0];
      const dy = px[1] - middle[1];
      const factor = 1 + pose.lensBend * ((dx * dx + dy * dy) / halfDiagonal ** 2);
      const u = (dx * factor) / focal;
      const v = (dy * factor) / focal;
      // Two equations in x and y: (r0 − u r6) x + (r1 − u r7) y = u D, and the same for v.
      const a = rotation[0]! - u * rotation[6]!;
      const b = rotation[1]! - u * rotation[7]!;
      const c = rotation[3]! - v * rotation[6]!;
      const d = rotation[4]! - v * rotation[7]!;
      const determinant = a * d - b * c;
      const right = u * pose.distanceMm;
      const lower = v * pose.distanceMm;
      return [
        (right * d - b * lower) / determinant + pose.centreMm[0],
        (a * lower - right * c) / determinant + pose.centreMm[1],
      ];
    },
  };
}

/** Row-major 3×3: roll about the view axis after the two tilts. */
function rotationMatrix(pose: CameraPose): number[] {
  const radians = Math.PI / 180;
  const [cr, sr] = [Math.cos(pose.rollDegrees * radians), Math.sin(pose.rollDegrees * radians)];
  const [cx, sx] = [Math.cos(pose.tiltXDegrees * radians), Math.sin(pose.tiltXDegrees * radians)];
  const [cy, sy] = [Math.cos(pose.tiltYDegrees * radians), Math.sin(pose.tiltYDegrees * radians)];
  const tilt = [cy, 0, sy, sx * sy, cx, -sx * cy, -cx * sy, sx, cx * cy];
  return [
    cr * tilt[0]! - sr * tilt[3]!,
    cr * tilt[1]! - sr * tilt[4]!,
    cr * tilt[2]! - sr * tilt[5]!,
    sr * tilt[0]! + cr * tilt[3]!,
    sr * tilt[1]! + cr * tilt[4]!,
    sr * tilt[2]! + cr * tilt[5]!,
    tilt[6]!,
    tilt[7]!,
    tilt[8]!,
  ];
}
