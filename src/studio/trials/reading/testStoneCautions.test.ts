import { describe, expect, it } from 'vitest';
import type { PatchFinding } from '../../../records/patchReading.ts';
import type { StonePatch, TestStone } from '../../../records/testStone.ts';
import { layGrid } from './layGrid.ts';
import { findingCautions, layoutCautions } from './testStoneCautions.ts';

const grid = {
  rows: 2,
  columns: 2,
  originMm: [10, 10],
  squareMm: [30, 30],
  gutterMm: [10, 10],
  turnDegrees: 0,
  steps: 1,
} as const;

function stone(
  change: (patch: StonePatch, index: number) => Partial<StonePatch>,
  more: Partial<TestStone> = {},
) {
  const patches = layGrid(grid).map((patch, index) => ({ ...patch, ...change(patch, index) }));
  return {
    sizeMm: [100, 100],
    factors: [{ name: 'medium', givenTo: 'patch' }],
    patches,
    drawn: null,
    ruler: null,
    prints: [],
    ...more,
  } as unknown as TestStone;
}

const codes = (of: TestStone) => layoutCautions(of).map(({ code }) => code);
const alike = () => ({ treatment: { medium: 'crayon' } });
const drawn = {
  photograph: 'p',
  corners: [
    [0, 0],
    [1000, 0],
    [1000, 1000],
    [0, 1000],
  ],
  repeat: null,
  flat: null,
} as const;

describe('what to mind about a test stone', () => {
  it('nothing where treatments stand twice, one is the control, and all are typed', () => {
    expect(
      codes(stone((_, index) => ({ ...alike(), intention: index === 0 ? 'control' : 'image' }))),
    ).toEqual([]);
  });

  it('no control, no replicate, treatments that are not typed', () => {
    expect(codes(stone((_, index) => ({ treatment: { medium: `m${index}` } })))).toEqual([
      'no-control',
      'no-replicates',
    ]);
    const one = stone((_, index) => (index === 0 ? {} : alike()));
    expect(codes(one)).toContain('treatments-unknown');
    expect(layoutCautions(one)[0]!.message).toContain('row 1, first');
  });

  it('steps of one square are no replicates of each other', () => {
    const stepped = stone(alike);
    const patches = layGrid({ ...grid, rows: 1, columns: 1, steps: 3 }).map((patch) => ({
      ...patch,
      ...alike(),
    }));
    expect(codes({ ...stepped, patches })).toContain('no-replicates');
  });

  it('patches that overlap, guide lines across them aside', () => {
    const [one] = layGrid(grid);
    const over = (intention: StonePatch['intention']) =>
      codes(
        stone((_, index) => (index === 1 ? { ...alike(), polygonMm: one!.polygonMm, intention } : alike())),
      );
    expect(over('image')).toContain('patches-overlap');
    expect(over('guide')).not.toContain('patches-overlap');
  });

  it('a tracing sheet at the wrong scale, which the ruler tells, and patches too small for the camera', () => {
    const ruler = (toPx: number) => ({ fromPx: [100, 500], toPx: [toPx, 500], lengthMm: 50 }) as const;
    expect(codes(stone(alike, { drawn, ruler: ruler(602) }))).not.toContain('wrong-scale');
    const wrong = stone(alike, { drawn, ruler: ruler(625) });
    expect(codes(wrong)).toContain('wrong-scale');
    expect(layoutCautions(wrong)[0]!.message).toMatch(/50 mm measure 52\.5 mm.*printed at 95 %.*95 × 95 mm/s);
    const far = drawn.corners.map(([x, y]) => [x / 20, y / 20]) as unknown as typeof drawn.corners;
    expect(codes(stone(alike, { drawn: { ...drawn, corners: far } }))).toContain('small-patches');
  });
});

describe('what to mind about findings', () => {
  const found = (unread: (patch: StonePatch) => boolean) =>
    layGrid(grid).map(({ id, ...patch }) => ({
      ...patch,
      patch: id,
      camera: unread({ id, ...patch })
        ? { hold: null, why: 'The sheet does not cover it.' }
        : { hold: 'held', why: null },
      corrections: [],
      holdBy: null,
    })) as unknown as PatchFinding[];

  it('a strip of which nothing is read is missing; single patches are named with the reason', () => {
    const strip = findingCautions(found(({ row }) => row === 2));
    expect(strip.map(({ code }) => code)).toEqual(['missing-strips', 'unread-patches']);
    expect(strip[0]!.message).toContain('row 2');
    const one = findingCautions(found(({ id }) => id === 'row 1, second'));
    expect(one).toEqual([
      { code: 'unread-patches', message: 'row 1, second not read. The sheet does not cover it.' },
    ]);
    expect(findingCautions(found(() => false))).toEqual([]);
  });
});
