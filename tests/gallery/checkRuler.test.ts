import { expect, it } from 'vitest';
import { checkRulerMm } from '../../src/paper/sheets/protocol/checkRuler.ts';
import { protocolSheetPdf } from '../../src/paper/sheets/protocolSheet.ts';
import { type GreyPicture, readGrey } from './greyPicture.ts';
import { pdfPages } from './popplerTools.ts';

const dotsPerInch = 300;

/** A printer's own scaling error is far larger than what half a millimetre leaves to the sheet. */
const rulerToleranceMm = 0.5;

it('prints a check ruler that is 100 mm long', async () => {
  const [page] = await pdfPages(await protocolSheetPdf(), dotsPerInch);
  const lengthsMm = darkRunsPx(await readGrey(page!)).map((px) => (px / dotsPerInch) * 25.4);
  const ruler = lengthsMm.filter((mm) => mm > 80 && mm < 150);
  expect(ruler.length).toBeGreaterThan(0);
  for (const mm of ruler) expect(Math.abs(mm - checkRulerMm)).toBeLessThanOrEqual(rulerToleranceMm);
});

/** Lengths of all unbroken dark runs along rows. */
function darkRunsPx({ widthPx, heightPx, codes }: GreyPicture): readonly number[] {
  const runs: number[] = [];
  for (let y = 0; y < heightPx; y++) {
    let run = 0;
    for (let x = 0; x <= widthPx; x++) {
      if (x < widthPx && codes[y * widthPx + x]! < 128) run++;
      else if (run > 0) {
        runs.push(run);
        run = 0;
      }
    }
  }
  return runs;
}
