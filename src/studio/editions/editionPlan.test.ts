import { describe, expect, it } from 'vitest';
import type { EditionPaper } from '../../records/edition.ts';
import type { EditionQuestion } from '../../records/editionPlan.ts';
import { planEdition } from './editionPlan.ts';
import { spoilageRate } from './spoilage.ts';

const paper: EditionPaper = {
  name: 'Creek rag',
  sheetMm: [560, 760],
  sheetGrain: 'long',
  pieceMm: [380, 560],
  pieceGrain: 'any',
  tearLossMm: 0,
  gramsPerM2: 250,
  damped: 'yes',
};
const none = { impressions: 0, spoiled: 0, intervalsMinutes: [] };
const ask = (more: Partial<EditionQuestion>): EditionQuestion => ({
  size: 5,
  artistProofs: null,
  paper,
  inkedCm2: 300,
  rackPlaces: 12,
  past: none,
  ...more,
});

describe('sheets', () => {
  const counts = (size: number) => planEdition(ask({ size })).sheets.map(({ sheets }) => sheets);
  it('five prints take fifteen sheets, thirty take forty-eight', () => {
    expect(counts(5)).toEqual([5, 1, 1, 1, 1, 3, 3]);
    expect(planEdition(ask({})).sheetsInAll).toBe(15);
    expect(planEdition(ask({})).goodWanted).toBe(8);
    expect(counts(30)).toEqual([30, 3, 1, 1, 1, 3, 9]);
    expect(planEdition(ask({ size: 30 })).sheetsInAll).toBe(48);
  });
  it('parts of a sheet are rounded up, whole ones are not raised by a last bit', () => {
    expect(counts(12)).toEqual([12, 2, 1, 1, 1, 3, 4]);
    expect(counts(10)[1]).toBe(1);
    expect(counts(20)[6]).toBe(6);
  });
  it('artist’s proofs as asked, none too', () => {
    expect(planEdition(ask({ artistProofs: 0 })).sheetsInAll).toBe(14);
  });
});

describe('spoilage', () => {
  it('is 30 % until the room has twenty impressions, and says how many it has', () => {
    expect(spoilageRate({ impressions: 19, spoiled: 9 })).toMatchObject({
      value: 0.3,
      basis: 'common practice',
      impressions: 19,
    });
    expect(spoilageRate({ impressions: 19, spoiled: 9 }).warnings[0]).toContain('19');
  });
  it('is then what spoiled for each sound print, with its interval', () => {
    const rate = spoilageRate({ impressions: 20, spoiled: 10 });
    expect(rate).toMatchObject({ value: 1, basis: 'this room', impressions: 20 });
    expect(rate.low).toBeGreaterThan(0.3);
    expect(rate.low).toBeLessThan(1);
    expect(rate.high).toBeCloseTo(1 / rate.low, 9);
    const plan = planEdition(ask({ size: 10, past: { ...none, impressions: 20, spoiled: 10 } }));
    expect(plan.sheets.at(-1)!.sheets).toBe(10);
  });
  it('a room that spoiled everything is no rate', () => {
    expect(spoilageRate({ impressions: 30, spoiled: 30 }).value).toBe(0.3);
  });
});

describe('paper, ink, minutes, rack', () => {
  it('takes the way that gives most, or the one with the fibres as wanted, and says what that costs', () => {
    const best = planEdition(ask({})).tearDown!;
    expect([best.pieces.length, best.pieceGrain, best.parentSheets]).toEqual([2, 'short', 8]);
    const along = planEdition(ask({ paper: { ...paper, pieceGrain: 'long' } })).tearDown!;
    expect([along.pieces.length, along.pieceGrain, along.parentSheets]).toEqual([1, 'long', 15]);
    expect(along.sentences[0]).toContain('the other way round it would be 2');
  });
  it('pieces neither overlap nor reach past the sheet', () => {
    const { pieces, sheetMm } = planEdition(ask({ paper: { ...paper, pieceMm: [150, 200], tearLossMm: 4 } }))
      .tearDown!;
    expect(pieces.length).toBeGreaterThan(6);
    for (const [i, a] of pieces.entries()) {
      expect(a.xMm + a.widthMm).toBeLessThanOrEqual(sheetMm[0]);
      expect(a.yMm + a.heightMm).toBeLessThanOrEqual(sheetMm[1]);
      for (const b of pieces.slice(i + 1)) {
        const apart = Math.max(Math.abs(a.xMm - b.xMm) - a.widthMm, Math.abs(a.yMm - b.yMm) - a.heightMm);
        expect(apart).toBeGreaterThanOrEqual(4 - 1e-9);
      }
    }
  });
  it('what does not fit is said, not counted as none needed', () => {
    const { tearDown } = planEdition(ask({ paper: { ...paper, pieceMm: [800, 900] } }));
    expect(tearDown).toMatchObject({ pieces: [], parentSheets: null });
    expect(tearDown!.sentences[0]).toContain('larger than the sheet');
  });
  it('what is not known is null', () => {
    const unknown = planEdition(
      ask({
        inkedCm2: null,
        rackPlaces: null,
        paper: { ...paper, sheetMm: null, pieceMm: null, gramsPerM2: null },
      }),
    );
    expect(unknown).toMatchObject({
      tearDown: null,
      paperGrams: null,
      growthMm: null,
      inkGrams: null,
      rackPlaces: { needed: 15, missing: null },
    });
  });
  it('ink is a range of film on all sheets and the newsprint, and the charge once', () => {
    const { inkGrams } = planEdition(ask({}));
    expect(inkGrams!.low).toBeCloseTo(30 + 0.03 * 30 * 1, 9);
    expect(inkGrams!.high).toBeCloseTo(60 + 0.03 * 30 * 2, 9);
  });
  it('the rack is told short', () => {
    expect(planEdition(ask({})).rackPlaces).toEqual({ needed: 15, missing: 3 });
  });
  it('a piece grows most across its fibres', () => {
    const { growthMm } = planEdition(ask({}));
    // fibres along the short side: the long one grows
    expect(growthMm!.long.low).toBeGreaterThan(growthMm!.short.high);
  });
  it('minutes are the room’s own once it has ten intervals', () => {
    const own = planEdition(ask({ past: { ...none, intervalsMinutes: Array(10).fill(5) } })).minutes;
    expect(own).toMatchObject({ basis: 'this room', low: 50 + 75, high: 100 + 75 });
    expect(planEdition(ask({})).minutes.basis).toBe('memory');
  });
});
