import { writeFileSync } from 'node:fs';
import { seededRandom } from '../../../src/foundation/random.ts';
import { openPicture } from '../../../src/imaging/codecs/pictureLibrary.ts';
import { hatchPatternSvg } from '../../../src/paper/charts/hatching.ts';

/** Draws the three kept pictures of "Low Water" afresh: npx tsx tests/gallery/pictures/drawPictures.ts */

const random = seededRandom(12);
const folder = new URL('.', import.meta.url);

function specks(
  count: number,
  box: readonly [number, number, number, number],
  shade: string,
  drop: number,
): string {
  return Array.from({ length: count }, () => {
    const [x, y, width, height] = box;
    const place = `cx="${(x + width * random()).toFixed(1)}" cy="${(y + height * random()).toFixed(1)}"`;
    return random() < drop ? '' : `<circle ${place} r="${(0.5 + random()).toFixed(1)}" fill="${shade}"/>`;
  }).join('');
}

function drawing(ground: string, ink: string, printed: boolean): string {
  const reeds = Array.from(
    { length: 26 },
    (_, index) =>
      `M${28 + index * 6} 388q${(index * 37) % 9} -40 ${((index * 53) % 15) - 7} -${60 + ((index * 71) % 40)}`,
  ).join('');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="450" height="600" viewBox="0 0 300 400">` +
    `<rect width="300" height="400" fill="${ground}"/>` +
    `<g opacity="0.55">${specks(2600, [16, 14, 268, 60], ink, printed ? 0.9 : 0.2)}</g>` +
    `<g opacity="0.7">${specks(4200, [16, 74, 268, 100], ink, 0.3)}</g>` +
    specks(6000, [16, 180, 268, 96], ink, 0.3) +
    (printed ? `<path d="M180 236h70v40h-70z" fill="${ink}"/>` : specks(1800, [180, 236, 70, 40], ink, 0)) +
    `<path d="${reeds}" stroke="${ink}" stroke-width="1.2" fill="none"/>` +
    `<rect x="226" y="120" width="14" height="200" fill="${ink}"/>` +
    `<circle cx="60" cy="56" r="22" fill="${ground}"/></svg>`
  );
}

const overlay =
  `<svg xmlns="http://www.w3.org/2000/svg" width="450" height="600" viewBox="0 0 300 400"><defs>` +
  `${hatchPatternSvg('lost', 'lost', '#1a1714')}${hatchPatternSvg('filled', 'filled', '#1a1714')}` +
  `${hatchPatternSvg('scum', 'scum', '#1a1714')}</defs><rect width="300" height="400" fill="#f6f3ea"/>` +
  `<rect x="0.5" y="0.5" width="299" height="399" fill="none" stroke="#8b806e"/>` +
  `<path d="M16 14H284V74H16Z" fill="url(#lost)" stroke="#1a1714"/>` +
  `<path d="M180 236h70v40h-70z" fill="url(#filled)" stroke="#1a1714"/>` +
  `<path d="M196 352h84v34h-84z" fill="url(#scum)" stroke="#1a1714"/></svg>`;

const stone = await openPicture(Buffer.from(drawing('#cfc4ab', '#262019', false)))
  .jpeg({ quality: 70 })
  .toBuffer();
const proof = await openPicture(Buffer.from(drawing('#f4f1e8', '#1d1a17', true)))
  .jpeg({ quality: 70 })
  .toBuffer();
writeFileSync(new URL('stone.jpg', folder), stone);
writeFileSync(new URL('proof.jpg', folder), proof);
writeFileSync(new URL('overlay.png', folder), await openPicture(Buffer.from(overlay)).png().toBuffer());
