import { ptPerMm, type SheetContent } from '../pdfDocument.ts';
import { note } from '../sheetParts.ts';

const sideMm = 24;
const barMm = 10;

type Corner = 'top left' | 'top right' | 'bottom right' | 'bottom left';

/**
 * Four corner marks to cut out: black right angles, 24 mm long, that hug the work rectangle from outside,
 * their inner corner on its corner, so that they cover nothing of the work. The one for the top left
 * carries an F, which reads as an F only when the picture is neither turned nor mirrored.
 */
export function cornerMarks(): SheetContent {
  const corners: readonly Corner[] = ['top left', 'top right', 'bottom right', 'bottom left'];
  return {
    columns: corners.map((corner) => ({
      width: '*',
      stack: [
        { svg: markSvg(corner), width: sideMm * ptPerMm },
        note(corner === 'top left' ? `${corner}: the F` : corner),
      ],
    })),
    margin: [0, 2, 0, 2],
  };
}

/** One mark, its unit the millimetre. */
function markSvg(corner: Corner): string {
  const left = corner.endsWith('right') ? sideMm : 0;
  const top = corner.startsWith('bottom') ? sideMm : 0;
  const turned = `translate(${left} ${top}) scale(${left > 0 ? -1 : 1} ${top > 0 ? -1 : 1})`;
  const angle = `M0 0H${sideMm}V${barMm}H${barMm}V${sideMm}H0Z`;
  const letter = 'M2.6 1.4H7.8V3.1H4.4V4.5H7V6.1H4.4V8.6H2.6Z';
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${sideMm}" height="${sideMm}" viewBox="0 0 ${sideMm} ${sideMm}">` +
    `<g transform="${turned}"><path d="${angle}" fill="#000000"/></g>` +
    (corner === 'top left' ? `<path d="${letter}" fill="#ffffff"/>` : '') +
    '</svg>'
  );
}
