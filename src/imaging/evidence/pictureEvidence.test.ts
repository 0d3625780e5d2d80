import { describe, expect, it } from 'vitest';
import { drawnTone, evidenceOf, valueIn } from './coveragePair.testing.ts';
import { pullChanges } from './pullChanges.ts';

const faithful = evidenceOf((tone) => tone);
const value = (evidence: ReturnType<typeof evidenceOf>, name: Parameters<typeof valueIn>[1]) =>
  valueIn(evidence.features, name);

describe('the evidence on a print', () => {
  it('is nothing on a faithful one', () => {
    const names = [
      'gradientAlong',
      'gradientAcross',
      'streakAlong',
      'bandsRepeat',
      'bandOnce',
      'secondEdge',
      'bareGrey',
    ] as const;
    for (const name of names) expect(Math.abs(value(faithful, name)), name).toBeLessThan(0.005);
    for (const name of [
      'lightsLostInPatches',
      'wholeTonesGone',
      'paleSoftPatch',
      'paleSpots',
      'ghostRepeat',
    ] as const)
      expect(value(faithful, name), name).toBeLessThan(0.02);
  });

  it('has the size and the side of a slope', () => {
    const sloped = evidenceOf((tone, x) => tone * (0.85 + 0.3 * (x / 120)));
    expect(value(sloped, 'gradientAcross')).toBeCloseTo(0.3, 1);
    expect(sloped.features.gradientAcross!.note).toMatch(/right/);
    expect(value(sloped, 'gradientAlong')).toBeLessThan(0.05);
  });

  it('tells a line that runs through from a patch', () => {
    const streak = evidenceOf((tone, x) => (Math.abs(x - 46) < 1.5 ? 0.7 * tone : tone));
    expect(value(streak, 'streakAlong')).toBeGreaterThan(0.1);
    expect(streak.features.streakAlong!.note).toMatch(/paler, 4[5-7] mm/);
    expect(value(streak, 'streakDarker')).toBe(0);
    const burr = evidenceOf((tone, x) => (Math.abs(x - 46) < 1.5 ? 1.3 * tone : tone));
    expect(value(burr, 'streakDarker')).toBeGreaterThan(0.1);
    const patch = evidenceOf((tone, x, y) => (Math.hypot(x - 46, y - 47) < 9 ? 0.1 * tone : tone));
    expect(value(patch, 'streakAlong')).toBeLessThan(0.05);
  });

  it('tells bands that come again, with their distance, from one band', () => {
    const waves = evidenceOf((tone, _x, y) => tone * (0.9 + 0.1 * Math.cos((2 * Math.PI * y) / 18)));
    expect(value(waves, 'bandsRepeat')).toBeGreaterThan(0.03);
    expect(waves.features.bandsRepeat!.note).toMatch(/every 1[789] mm/);
    const once = evidenceOf((tone, _x, y) => (Math.abs(y - 75) < 4 ? 0.7 * tone : tone));
    expect(value(once, 'bandOnce')).toBeGreaterThan(0.1);
  });

  it('tells lights lost in patches, whole tones gone, and a patch that is merely pale', () => {
    const lights = evidenceOf((tone, _x, y) => (tone < 0.28 && y < 60 ? 0.05 * tone : tone));
    expect(value(lights, 'lightsLostInPatches')).toBeGreaterThan(0.1);
    expect(value(lights, 'wholeTonesGone')).toBe(0);
    const gone = evidenceOf((tone, x, y) => (Math.hypot(x - 74, y - 75) < 8 ? 0.2 * tone : tone));
    expect(value(gone, 'wholeTonesGone')).toBeGreaterThan(0.03);
    const pale = evidenceOf((tone, x, y) => (Math.hypot(x - 74, y - 75) < 12 ? 0.75 * tone : tone));
    expect(value(pale, 'paleSoftPatch')).toBeGreaterThan(0.03);
    expect(value(pale, 'wholeTonesGone')).toBe(0);
  });

  it('tells the ends of the scale', () => {
    const closed = evidenceOf((tone) => (tone > 0.5 ? tone + 0.7 * (1 - tone) : tone));
    expect(value(closed, 'darksClosed')).toBeGreaterThan(0.5);
    expect(value(closed, 'middlesGain')).toBeLessThan(0.06);
    expect(
      value(
        evidenceOf((tone) => (tone < 0.3 ? tone * 0.3 : tone)),
        'lightsLow',
      ),
    ).toBeGreaterThan(0.5);
  });

  it('tells grey on bare stone by where it lies', () => {
    const even = evidenceOf((tone) => tone + (1 - tone) * 0.06);
    expect(value(even, 'bareGrey')).toBeCloseTo(0.06, 2);
    expect(Math.abs(value(even, 'borderGrey'))).toBeLessThan(0.01);
    const border = evidenceOf((tone, x, y) =>
      Math.min(x, y, 120 - x, 150 - y) < 9 && tone === 0 ? 0.1 : tone,
    );
    expect(value(border, 'borderGrey')).toBeGreaterThan(0.04);
    expect(value(border, 'bareGrey')).toBeLessThan(0.01);
  });

  it('tells a second edge and its way', () => {
    const moved = evidenceOf((tone, x, y) => tone + (1 - tone) * 0.4 * drawnTone(x, y - 3));
    expect(value(moved, 'secondEdge')).toBeGreaterThan(0.15);
    expect(value(moved, 'smear')).toBeGreaterThan(0.15);
    const aside = evidenceOf((tone, x, y) => tone + (1 - tone) * 0.4 * drawnTone(x - 3, y));
    expect(value(aside, 'secondEdge')).toBeGreaterThan(0.15);
    expect(value(aside, 'smear')).toBe(0);
  });

  it('tells the drawing come again further on', () => {
    const ghost = evidenceOf((tone, x, y) => tone + (1 - tone) * 0.15 * drawnTone(x, y - 42));
    expect(value(ghost, 'ghostRepeat')).toBeGreaterThan(0.03);
    expect(ghost.features.ghostRepeat!.note).toMatch(/42 mm/);
    expect(value(ghost, 'ghostExplains')).toBeGreaterThan(0.6);
  });

  it('does not take shapes that have nothing to do with the drawing for the drawing come again', () => {
    const shapes = evidenceOf((tone, x, y) =>
      Math.sin(x / 2.3 + y / 9) * Math.sin(y / 3.1) > 0.4 ? tone + (1 - tone) * 0.12 : tone,
    );
    expect(value(shapes, 'ghostExplains')).toBeLessThan(0.3);
    expect(value(faithful, 'ghostExplains')).toBeLessThan(0.3);
  });

  it('tells unevenness all over the sheet from what keeps to a place, a line, a slope or the lights', () => {
    const over = (printed: Parameters<typeof evidenceOf>[0]) => value(evidenceOf(printed), 'unevenAllOver');
    expect(over((tone, x, y) => tone * (0.75 + 0.25 * Math.sin((x + 0.7 * y) / 4.5)))).toBeGreaterThan(0.08);
    expect(value(faithful, 'unevenAllOver')).toBeLessThan(0.02);
    expect(over((tone, x, y) => (Math.hypot(x - 46, y - 47) < 14 ? 0.4 * tone : tone))).toBeLessThan(0.03);
    expect(over((tone, x) => tone * (0.85 + 0.3 * (x / 120)))).toBeLessThan(0.03);
    expect(over((tone, x) => (Math.abs(x - 46) < 1.5 ? 0.7 * tone : tone))).toBeLessThan(0.03);
    expect(over((tone, _x, y) => tone * (0.9 + 0.1 * Math.cos((2 * Math.PI * y) / 18)))).toBeLessThan(0.04);
    expect(over((tone, _x, y) => (tone < 0.28 && y < 60 ? 0.05 * tone : tone))).toBeLessThan(0.03);
  });

  it('tells small spots, and unevenness that nothing else describes', () => {
    const spots = evidenceOf((tone, x, y) =>
      Math.hypot((x % 13) - 6, (y % 13) - 6) < 1.6 ? 0.2 * tone : tone,
    );
    expect(value(spots, 'paleSpots')).toBeGreaterThan(5);
    const clouds = evidenceOf(
      (tone, x, y) => tone * (0.75 + 0.25 * Math.sin(x / 7 + 2 * Math.sin(y / 11)) * Math.sin(y / 8)),
    );
    expect(value(clouds, 'otherStructure')).toBeGreaterThan(0.08);
    expect(value(faithful, 'otherStructure')).toBeLessThan(0.04);
  });

  it('says nothing where nothing was drawn or read', () => {
    const empty = evidenceOf(() => Number.NaN);
    expect(empty.features.gradientAlong).toBeNull();
    expect(empty.features.lightsLow).toBeNull();
    expect(empty.features.bareGrey).toBeNull();
  });
});

describe('what changed between two pulls', () => {
  const lost = (share: number) =>
    evidenceOf((tone, _x, y) => (tone < 0.28 && y < 60 ? share * tone : tone)).cells;

  it('tells whether what is missing stays or comes back', () => {
    expect(pullChanges(lost(0.1), lost(0.1))!.patchesStay!.value).toBe(1);
    const back = pullChanges(lost(0.1), lost(0.8))!;
    expect(back.patchesStay!.value).toBe(0);
    expect(back.lightsReturn!.value).toBeGreaterThan(0.1);
  });

  it('tells grey and darks that grow', () => {
    const greyer = evidenceOf((tone) => tone + (1 - tone) * 0.03).cells;
    expect(pullChanges(faithful.cells, greyer)!.bareGrows!.value).toBeCloseTo(0.03, 2);
    const darker = evidenceOf((tone) => (tone > 0.5 ? tone + 0.05 : tone)).cells;
    expect(pullChanges(faithful.cells, darker)!.darksGrow!.value).toBeCloseTo(0.05, 2);
  });

  it('is told from few whole numbers, with places that could not be read left out', () => {
    const { columns, rows, drawn, printed } = faithful.cells;
    expect(drawn).toHaveLength(columns * rows);
    for (const plane of [drawn, printed])
      expect(plane.every((kept) => kept === null || Number.isInteger(kept))).toBe(true);
    expect(Math.max(...drawn.map((kept) => kept ?? 0))).toBeLessThanOrEqual(100);
  });

  it('says nothing about two stones that differ in size', () => {
    expect(pullChanges(faithful.cells, { ...faithful.cells, rows: 3 })).toBeNull();
  });
});
