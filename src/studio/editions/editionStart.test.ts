import { expect, it } from 'vitest';
import type { KitEntry } from '../../records/kit.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { WorkZone } from '../../records/work.ts';
import { editionStart } from './editionStart.ts';
import { inkedArea } from './inkedArea.ts';

const square = (x: number, side: number) =>
  [
    [x, 0],
    [x + side, 0],
    [x + side, side],
    [x, side],
  ] as const;
const zone = (id: string, x: number, more: Partial<WorkZone> = {}) =>
  ({ id, name: id, medium: 'crayon-3', polygonMm: square(x, 100), tone: null, ...more }) as WorkZone;
const read = (darkness: Readonly<Record<string, number>>) =>
  ({
    zones: Object.entries(darkness).map(([id, value]) => ({
      id,
      darkness: { value, low: value - 0.02, high: value + 0.02, basis: 'measured', warnings: [] },
    })),
  }) as unknown as PullTones;
const moon = zone('moon', 0, { polygonMm: square(10, 20), intention: 'stop-out' });
const zones = [zone('sky', 0), zone('mud', 200), moon];

it('the inked area is what the print covers of each drawn zone, without what is kept bare in it', () => {
  // 96 cm² at 0.4 of a film of 0.8, and 100 cm² of a solid
  const area = inkedArea(zones, read({ sky: 0.4, mud: 0.85 }), 0.8)!;
  expect(area).toMatchObject({ how: 'print', cm2: { basis: 'measured', warnings: [] } });
  expect(area.cm2.value).toBeCloseTo(96 * 0.5 + 100, 6);
  expect(area.cm2.low).toBeCloseTo(96 * 0.475 + 100, 6);
  const half = inkedArea(zones, read({ sky: 0.4 }), 0.8)!;
  expect(half.cm2.warnings).toEqual(['Not read on the print: mud.']);
  const toned = zones.map((one) => ({ ...one, tone: { mean: 0.25, darkest: 1, basis: 'typed' as const } }));
  expect(inkedArea(toned, null, null)).toMatchObject({ how: 'drawing', cm2: { value: 49 } });
  expect(inkedArea(toned, read({ sky: 0.4 }), null)!.how).toBe('drawing');
  expect(inkedArea(zones, null, 0.8)).toMatchObject({ how: 'whole', cm2: { value: 196, low: 196 } });
  expect(inkedArea([moon], null, null)).toBeNull();
});

const pull = {
  id: 'p6',
  number: 6,
  paper: { id: 'k1', words: 'rag 250' },
  damp: true,
  ink: { id: null, words: 'mudbank black' },
} as Pull;
const tones = { lights: 0.1, middles: 0.4, darks: 0.8 };
const approval = { artist: 'A.T.', printer: 'P.R.', photograph: 'f', tones };

it('an edition starts from the pull that is good to print, and every value says where it comes from', () => {
  const paper = { tool: 'paper', gramsPerM2: 250 } as KitEntry;
  const inked = inkedArea(zones, read({ sky: 0.4, mud: 0.85 }), 0.8);
  expect(editionStart({ approved: { pull, approval }, paper, inked })).toMatchObject({
    pull: { id: 'p6', number: 6 },
    paperName: { value: 'rag 250', from: 'Pull 6, good to print, is on it.' },
    gramsPerM2: { value: 250 },
    damped: { value: 'yes', from: 'Pull 6, good to print, was printed damp.' },
    ink: { value: 'mudbank black' },
    inkedCm2: {
      value: { value: 148 },
      from: 'Read on pull 6, good to print; the truth lies within 146 to 150 cm², 19 times of 20.',
    },
    approvedBy: { value: 'A.T., P.R.' },
    approval: null,
  });
});

it('what nobody noted of that pull is not known; told by eye, its tones are what prints are held against', () => {
  const bare = { ...pull, damp: null, ink: null };
  const start = editionStart({
    approved: { pull: bare, approval: { ...approval, photograph: null } },
    paper: null,
    inked: null,
  });
  expect(start).toMatchObject({ damped: null, ink: null, gramsPerM2: null, inkedCm2: null });
  expect(start.approval).toEqual({ value: tones, from: 'Pull 6, as told by eye.' });
  const none = editionStart({ approved: null, paper: null, inked: inkedArea(zones, null, null) });
  expect(none).toMatchObject({ pull: null, paperName: null });
  expect(none.inkedCm2!.from).toMatch(/upper bound/);
});
