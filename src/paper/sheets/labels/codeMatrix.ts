import { encode } from 'uqr';

/**
 * The modules of a QR code (ISO/IEC 18004), rows of dark and light with the quiet zone of four modules around; error
 * correction M, so that a smear on a label does not end it.
 */
export function codeMatrix(text: string): readonly (readonly boolean[])[] {
  return encode(text, { ecc: 'M', border: 4 }).data;
}
