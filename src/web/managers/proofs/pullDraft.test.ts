import { describe, expect, it } from 'vitest';
import { type Pull, pullKinds } from '../../../records/pull.ts';
import { draftOfTyped, nextPull, stepsOf, usedBefore } from './pullDraft.ts';

const now = '2026-03-04T10:00:00.000Z';
const rag = { id: 'p1', words: 'rag 250' };

const fifth: Pull = {
  ...draftOfTyped({ ...nextPull([]), paper: rag, damp: true, charges: 7, who: 'P.R.' }, now)!,
  number: 5,
  id: 'five',
  workId: 'work',
  putBy: false,
  version: 1,
  createdAt: now,
  changedAt: now,
  sample: false,
};

describe('a pull being entered', () => {
  it('begins with the next number and what was used last, but not with what was seen', () => {
    const next = nextPull([fifth]);
    expect(next).toMatchObject({ number: 6, paper: rag, damp: true, charges: 7, who: 'P.R.', passes: null });
    expect([next.photographs, next.ageMinutes, next.way]).toEqual([[], null, null]);
    expect(pullKinds).toContain(nextPull([]).kind);
  });

  it('asks for marks and a second photograph only by photograph, for tones only by eye', () => {
    const photograph = { photograph: 'a', takenAt: now, corners: null };
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: false }, true, true)).toContain(
      'again',
    );
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: false }, true, true)).not.toContain(
      'marks-again',
    );
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: false }, true, true)).toContain(
      'marks',
    );
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: false }, false, true)).not.toContain(
      'marks',
    );
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: false }, true, false)).not.toContain(
      'again',
    );
    expect(stepsOf({ way: 'eye', photographs: [photograph], chipped: false }, true, true)).not.toContain(
      'marks',
    );
    expect(stepsOf({ way: 'eye', photographs: [], chipped: false }, true, true)).toContain('middles');
    expect(stepsOf({ way: 'none', photographs: [], chipped: false }, true, true)).not.toContain('age');
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: false }, true, true)).not.toContain(
      'chips',
    );
    expect(stepsOf({ way: 'camera', photographs: [photograph], chipped: true }, true, true)).toContain(
      'chips',
    );
  });

  it('keeps grey chips by their share of the light, and offers them again for the next pull', () => {
    const polygonPx = [
      [1, 1],
      [9, 1],
      [9, 9],
    ] as const;
    const typed = {
      ...nextPull([]),
      paper: rag,
      way: 'camera',
      chipped: true,
      photographs: [
        {
          photograph: 'a',
          takenAt: now,
          corners: null,
          chips: [
            { name: 'white', polygonPx, density: 0.1 },
            { name: 'grey', polygonPx, density: null },
          ],
        },
      ],
    } as const;
    const kept = draftOfTyped(typed, now)!;
    expect(kept.photographs[0]!.chips).toEqual([{ name: 'white', polygonPx, reflectance: 10 ** -0.1 }]);
    expect(draftOfTyped({ ...typed, chipped: false }, now)!.photographs[0]!.chips).toEqual([]);
    expect(nextPull([{ ...fifth, photographs: kept.photographs }]).chipped).toBe(true);
    expect(nextPull([fifth]).chipped).toBe(false);
  });

  it('was made as many minutes before its photograph as it is old, and at no known time where that is not known', () => {
    const seen = {
      ...nextPull([fifth]),
      way: 'camera' as const,
      photographs: [{ photograph: 'a', takenAt: '2026-03-04T09:30:00.000Z', corners: null }],
    };
    const old = draftOfTyped({ ...seen, ageMinutes: 30 }, now)!;
    expect(old.madeAt).toBe('2026-03-04T09:00:00.000Z');
    expect(old.photographs[0]!.ageMinutes).toBe(30);
    expect(draftOfTyped(seen, now)).toMatchObject({ madeAt: null, photographs: [{ ageMinutes: null }] });
  });

  it('keeps tones told by eye only where some were told, and faults only where there is one', () => {
    const eye = { ...nextPull([fifth]), way: 'eye' as const };
    expect(draftOfTyped(eye, now)!.eye).toBeNull();
    const told = draftOfTyped({ ...eye, eye: { ...eye.eye, middles: 0.5 }, fault: ' slur ' }, now)!;
    expect(told.eye).toMatchObject({ lights: null, middles: 0.5, who: 'P.R.' });
    expect(told.faults).toEqual([{ words: 'slur', closed: null }]);
  });

  it('needs a paper', () => {
    expect(draftOfTyped(nextPull([]), now)).toBeNull();
  });

  it('offers what was used last first, each once', () => {
    const papers = usedBefore(
      [{ ...fifth, paper: { id: null, words: 'newsprint' } }, fifth, fifth],
      ({ paper }) => paper,
      ({ words }) => words,
    );
    expect(papers.map(({ words }) => words)).toEqual(['rag 250', 'newsprint']);
  });
});
