import { describe, expect, it } from 'vitest';
import { outlineMm } from '../../src/paper/charts/etchMap.ts';
import { marginMm, tileLayout } from '../../src/paper/sheets/etchMap/tileLayout.ts';
import { etchMapPdf } from '../../src/paper/sheets/etchMapSheet.ts';
import { hatchScaleSheetPdf } from '../../src/paper/sheets/hatchScaleSheet.ts';
import { checkRulerMm } from '../../src/paper/sheets/protocol/checkRuler.ts';
import { protocolSheetPdf } from '../../src/paper/sheets/protocolSheet.ts';
import { papers } from '../../src/records/paper.ts';
import { etchPlan } from '../../src/studio/etch/etchPlan.ts';
import { type GreyPicture, readGrey } from './greyPicture.ts';
import { pdfPages } from './popplerTools.ts';
import { lowWaterPlan } from './records/etchPlans.ts';

/** A printer's own scaling error is far larger than what half a millimetre leaves to the sheet. */
const rulerToleranceMm = 0.5;

const createdAt = new Date('2026-11-26T09:40:00Z');

describe('check ruler', () => {
  it('is 100 mm long on the photograph protocol', async () => {
    const [page] = await pdfPages(await protocolSheetPdf(createdAt), 300);
    expectRuler(rulersMm(await readGrey(page!), 300), 'the protocol');
  });

  it('is 100 mm long on the hatch scale', async () => {
    const [page] = await pdfPages(await hatchScaleSheetPdf(createdAt), 300);
    expectRuler(rulersMm(await readGrey(page!), 300), 'the hatch scale');
  });

  it.each(papers)('is 100 mm long on the overview and every tile of an etch map on %s', async (paper) => {
    const dotsPerInch = 150;
    const pdf = await etchMapPdf({
      ...lowWaterPlan,
      title: 'Low Water',
      paper,
      createdAt,
    });
    const { widthMm, heightMm } = lowWaterPlan.request.stone;
    const { pageMm, tiles } = tileLayout(widthMm, heightMm, paper);
    // Only the foot, since the map itself has lines of about this length.
    const footMm = pageMm[1] - marginMm.bottom + 10;
    const pages = await pdfPages(pdf, dotsPerInch, Math.round((footMm / 25.4) * dotsPerInch));
    expect(pages.length).toBe(1 + 2 * tiles.length);
    for (const [index, page] of pages.entries()) {
      expectRuler(rulersMm(await readGrey(page), dotsPerInch), `page ${index + 1}`);
    }
  });
  it('goes with a map at true size, both ways round', async () => {
    const stone = { ...lowWaterPlan.request.stone, widthMm: 150, heightMm: 180 };
    const request = { ...lowWaterPlan.request, stone, zones: [] };
    const plan = etchPlan(request);
    const pdf = await etchMapPdf({ request, plan, title: 'Bare', paper: 'a4', createdAt });
    const pages = await pdfPages(pdf, 150);
    expect(pages.length).toBe(3);
    for (const page of pages.slice(1)) {
      const edges = darkRunsMm(await readGrey(page), 150).filter((mm) => mm > 120);
      expect(edges.length).toBeGreaterThan(1);
      for (const mm of edges)
        expect(Math.abs(mm - stone.widthMm - outlineMm)).toBeLessThanOrEqual(rulerToleranceMm);
    }
  });
});

function expectRuler(rulersMm: readonly number[], where: string): void {
  expect(rulersMm.length, `rulers on ${where}`).toBeGreaterThan(0);
  for (const mm of rulersMm) {
    expect(Math.abs(mm - checkRulerMm), `${mm} mm on ${where}`).toBeLessThanOrEqual(rulerToleranceMm);
  }
}

/** Lengths of the dark runs that are about as long as a ruler. */
function rulersMm(picture: GreyPicture, dotsPerInch: number): readonly number[] {
  return darkRunsMm(picture, dotsPerInch).filter((mm) => mm > 80 && mm < 150);
}

/** Lengths of all unbroken dark runs along rows. */
function darkRunsMm({ widthPx, heightPx, codes }: GreyPicture, dotsPerInch: number): readonly number[] {
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
  return runs.map((px) => (px / dotsPerInch) * 25.4);
}
