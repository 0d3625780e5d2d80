/** How a device lies: the two angles of a `deviceorientation` event that do not depend on north, degrees. */
export interface DeviceAngles {
  /** Turned about the device's own x axis, −180..180. */
  readonly beta: number;
  /** Turned about its y axis, −90..90. */
  readonly gamma: number;
}

/** How the photographed object stands: flat below the camera, or upright as on a wall. */
export type ObjectPlane = 'lying' | 'upright';

/** How far the camera's look is from square to the plane. */
export interface Tilt {
  /** 0..180 for what lies; 0..90 for what stands upright, where a swing to the side can't be felt by a sensor. */
  readonly degrees: number;
  /** −1..1 along the screen's width: above 0 the screen's right edge is too high. 0 for what stands upright. */
  readonly right: number;
  /**
   * −1..1 along the screen's height. What lies: above 0 the screen's upper edge is too high. What stands upright:
   * above 0 the camera looks too far down.
   */
  readonly up: number;
}

/**
 * The tilt of a camera at the back of a device.
 * Rotation matrix Z–X′–Y″ of the W3C's Device Orientation specification (from memory); its third row is "up" in the
 * device's own axes: x to the right of the screen, y to its top, z out of it.
 * @param screenTurn `screen.orientation.angle`: 0, 90, 180 or 270 degrees
 */
export function tiltOf({ beta, gamma }: DeviceAngles, plane: ObjectPlane, screenTurn = 0): Tilt {
  const x = -Math.cos(radians(beta)) * Math.sin(radians(gamma));
  const y = Math.sin(radians(beta));
  const z = Math.cos(radians(beta)) * Math.cos(radians(gamma));
  if (plane === 'upright') {
    return { degrees: degrees(Math.asin(Math.min(1, Math.abs(z)))), right: 0, up: z };
  }
  const turn = radians(screenTurn);
  return {
    // The arc tangent stays exact near level, where an arc cosine does not.
    degrees: degrees(Math.atan2(Math.hypot(x, y), z)),
    right: x * Math.cos(turn) - y * Math.sin(turn),
    up: x * Math.sin(turn) + y * Math.cos(turn),
  };
}

function radians(angle: number): number {
  return (angle * Math.PI) / 180;
}

function degrees(angle: number): number {
  return (angle * 180) / Math.PI;
}
