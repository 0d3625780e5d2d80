import { type Matrix3, multiply3 } from '../../../science/algebra/matrix3.ts';
import { adaptation, connectionWhite, d65, srgbToXyz } from '../../../science/colour/tristimulus.ts';

/** Linear sRGB to XYZ of the ICC connection space (D50, Bradford-adapted from D65): rows X, Y, Z. */
export function srgbToConnection(): Matrix3 {
  return multiply3(adaptation(d65, connectionWhite), srgbToXyz);
}
