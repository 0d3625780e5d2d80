import { expect, test } from 'vitest';
import { type WorkZone, workStages } from '../../records/work.ts';
import { factsBefore, wholeHistory } from './workHistory.ts';
import { workVerdicts } from './workVerdicts.ts';

const stone = {
  widthMm: 400,
  heightMm: 500,
  pressSetUp: { scraperMm: null, packing: '', pressureEighths: null },
};

function zone(id: string, x: number, y: number, width: number, height: number, more = {}): WorkZone {
  const polygonMm = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ] as const;
  return { id, name: id, medium: 'crayon-3', polygonMm, tone: null, ...more };
}

const verdicts = (zones: WorkZone[], more = {}, onStone = {}) =>
  workVerdicts({ zones, rectangle: null, head: 'top', ...more }, { ...stone, ...onStone });

test('the ground is the stone outside all zones, overlaps counted once', () => {
  const found = verdicts([zone('a', 50, 50, 100, 100), zone('b', 100, 50, 100, 100)]);
  expect(found.areasCm2).toEqual([
    { zone: 'a', areaCm2: 100 },
    { zone: 'b', areaCm2: 100 },
  ]);
  expect(found.groundCm2).toBe(2000 - 150);
  expect(found.overlaps).toEqual([{ a: 'a', b: 'b', areaCm2: 50 }]);
  expect(found.sentences).toEqual(['a and b share 50 cm²: what is measured out for both counts it twice.']);
});

test('a narrow strip of ground is named, a touch and a wide one are not', () => {
  const beside = (gap: number) =>
    verdicts([zone('a', 50, 50, 50, 50), zone('b', 100 + gap, 50, 50, 50)]).gaps.map(({ gapMm }) => gapMm);
  expect(beside(0)).toEqual([]);
  expect(beside(1.5)).toEqual([1.5]);
  expect(beside(2)).toEqual([]);
});

test('borders are judged round what prints, else round the work rectangle', () => {
  const rectangle = { offsetMm: [20, 20], sizeMm: [300, 400] } as const;
  expect(verdicts([]).borders).toBeNull();
  expect(verdicts([], { rectangle }).image).toEqual({ topLeftMm: [20, 20], bottomRightMm: [320, 420] });
  const bare = zone('moon', 5, 5, 10, 10, { intention: 'stop-out' });
  const drawn = verdicts([zone('sky', 40, 40, 300, 100), bare], { rectangle });
  expect(drawn.image).toEqual({ topLeftMm: [40, 40], bottomRightMm: [340, 140] });
  expect(drawn.borders?.enough).toEqual({ top: true, right: true, bottom: true, left: true });
  expect(drawn.sentences).toEqual([
    'sky reaches outside the work rectangle: nothing is measured there.',
    'moon reaches outside the work rectangle: nothing is measured there.',
  ]);
});

test('a scraper that does not fit is named with those that would', () => {
  const pressSetUp = { ...stone.pressSetUp, scraperMm: 300 };
  const found = verdicts([zone('sky', 40, 40, 320, 100)], {}, { pressSetUp });
  expect(found.sentences).toEqual([
    'The scraper of 300 mm does not fit: from 330 to 390 mm would be wider than the image and inside the stone.',
  ]);
});

test('a hundred findings are not a hundred sentences', () => {
  const stacked = Array.from({ length: 16 }, (_, index) => zone(`z${index}`, 50, 50, 50, 50));
  const { sentences, overlaps } = verdicts(stacked);
  expect(overlaps).toHaveLength(120);
  expect(sentences).toHaveLength(21);
  expect(sentences.at(-1)).toBe('And 100 more of the kind.');
});

test('only what lies before a stage is asked, and what is not told is unknown', () => {
  expect(factsBefore('grained')).toEqual(['grain']);
  expect(factsBefore('first-etch')).not.toContain('washout');
  for (const [index, stage] of workStages.entries()) {
    const before = workStages[index - 1];
    if (before) expect(factsBefore(stage)).toEqual(expect.arrayContaining([...factsBefore(before)]));
  }
  expect(wholeHistory('drawn', [{ fact: 'media', value: 'crayon #2' }])).toEqual([
    { fact: 'grain', value: null },
    { fact: 'drawn-on', value: null },
    { fact: 'media', value: 'crayon #2' },
  ]);
});
