import { asWritten } from '../../../words/asWritten.ts';
import { textInWords } from '../../../words/inWords.ts';
import { chartInk, fitText, svgText } from '../../charts/chartInk.ts';
import { checkRulerMm } from '../protocol/checkRuler.ts';
import type { TileLayout } from './tileLayout.ts';

export interface TextLook {
  readonly size: number;
  readonly bold?: boolean;
  readonly narrow?: boolean;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly fill?: string;
  /** Shortened to about this width, mm. */
  readonly width?: number;
}

/** A line of words on a page whose unit is the millimetre; `y` is its base line. */
export function pageText(words: string, x: number, y: number, look: TextLook): string {
  const told = textInWords(words);
  const shown = asWritten(look.width === undefined ? told : fitText(told, look.width, look.size));
  return (
    `<text x="${x}" y="${y}" font-size="${look.size}" text-anchor="${look.anchor ?? 'start'}"` +
    ` fill="${look.fill ?? chartInk.ink}"${look.bold ? ' font-weight="bold"' : ''}` +
    `${look.narrow ? ' font-family="ArchivoNarrow"' : ''}>${svgText(shown)}</text>`
  );
}

/** A ruler of 100 mm between the outer edges of its end lines, a line each millimetre, to hold a steel one against; what to do is said beside it. */
export function pageRuler(x: number, y: number): string {
  const lineWidth = 0.2;
  const lines = Array.from({ length: checkRulerMm + 1 }, (_, mm) => {
    const at = x + lineWidth / 2 + (mm / checkRulerMm) * (checkRulerMm - lineWidth);
    return `M${at.toFixed(3)} ${y}v${mm % 10 === 0 ? 6 : mm % 5 === 0 ? 4.5 : 3}`;
  });
  const words = [0, 50, 100].map((mm) =>
    pageText(mm === 0 ? '0' : asWritten(`${mm} mm`), x + mm, y + 9.4, {
      size: 3,
      anchor: mm === 0 ? 'start' : mm === 50 ? 'middle' : 'end',
    }),
  );
  return (
    `<path d="M${x} ${y}H${x + checkRulerMm}${lines.join('')}" stroke="#000000" stroke-width="${lineWidth}"` +
    ` fill="none"/>${words.join('')}` +
    pageText(`Must measure ${asWritten('100 mm')}; if not,`, x + 104, y + 3.5, { size: 3 }) +
    pageText('print again at 100 %.', x + 104, y + 7.5, { size: 3 })
  );
}

/** The tiles over the stone's outline, small, the page's own filled black with its number in white. */
export function tileFinder(
  { tiles }: TileLayout,
  stoneMm: readonly [number, number],
  own: number,
  place: { readonly right: number; readonly top: number; readonly width: number; readonly height: number },
): string {
  const [all, last] = [tiles[0]!.shown, tiles.at(-1)!.shown];
  const spanX = last.right - all.left;
  const spanY = last.bottom - all.top;
  const scale = Math.min(place.width / spanX, place.height / spanY);
  const x = (mm: number) => round(place.right - (last.right - mm) * scale);
  const y = (mm: number) => round(place.top + (mm - all.top) * scale);
  const outline =
    `<rect x="${x(0)}" y="${y(0)}" width="${round(stoneMm[0] * scale)}" height="${round(stoneMm[1] * scale)}"` +
    ` fill="none" stroke="${chartInk.ink}" stroke-width="0.7"/>`;
  const frames = tiles.map(
    ({ number, kept }) =>
      `<rect x="${x(kept.left)}" y="${y(kept.top)}" width="${round((kept.right - kept.left) * scale)}"` +
      ` height="${round((kept.bottom - kept.top) * scale)}" fill="${number === own ? chartInk.ink : 'none'}"` +
      ` stroke="${chartInk.ink}" stroke-width="0.2"/>`,
  );
  // A number stands where its tile shows stone, clear of the stone's outline.
  const numbers = tiles.map(({ number, kept }) => {
    const [left, right] = [Math.max(0, kept.left), Math.min(stoneMm[0], kept.right)];
    const [top, bottom] = [Math.max(0, kept.top), Math.min(stoneMm[1], kept.bottom)];
    const size = Math.min(4, 0.75 * (bottom - top) * scale);
    return pageText(
      String(number),
      round((x(left) + x(right)) / 2),
      round((y(top) + y(bottom)) / 2 + 0.35 * size),
      {
        size: round(size),
        bold: true,
        anchor: 'middle',
        fill: number === own ? '#ffffff' : chartInk.ink,
      },
    );
  });
  return frames.join('') + outline + numbers.join('');
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
