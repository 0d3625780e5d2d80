import { codeMatrix } from '../../paper/sheets/labels/codeMatrix.ts';
import type { CodePicture } from '../../records/device.ts';

/** A QR code as a square of unit modules, its quiet zone around it; `path` runs along each row's dark stretches. */
export function codePicture(text: string): CodePicture {
  const rows = codeMatrix(text);
  const path = rows.flatMap((row, y) =>
    row.flatMap((dark, x) => {
      if (!dark || row[x - 1]) return [];
      const end = row.findIndex((other, at) => at > x && !other);
      return [`M${x} ${y}h${end - x}v1h${x - end}z`];
    }),
  );
  return { size: rows.length, path: path.join('') };
}
