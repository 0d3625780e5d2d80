import { describe, expect, it } from 'vitest';
import type { Measured } from '../../foundation/measured.ts';
import type { Pull } from '../../records/pull.ts';
import { type PullTones, pullTonesSchema } from '../../records/pullTones.ts';
import { pullGroups, repeatedReadings } from './pullReadings.ts';
import { roomNoise } from './roomNoise.ts';
import { workSeries } from './workSeries.ts';

const read = (value: number): Measured => ({
  value,
  low: value - 0.01,
  high: value + 0.01,
  basis: 'measured',
  warnings: [],
});

function tonesOf(middles: number): PullTones {
  return {
    schema: pullTonesSchema,
    engine: 'test',
    verdict: 'ok',
    reason: null,
    warnings: [],
    registration: null,
    tones: { lights: null, middles: read(middles), darks: null },
    bare: { darkness: null, why: 'not asked' },
    zones: [],
    solid: null,
    strength: null,
    ground: null,
    response: null,
    covered: 1,
  };
}

function aPull(number: number, more: Partial<Pull> = {}): Pull {
  return {
    id: `p${number}`,
    workId: 'low-water',
    number,
    kind: 'proof',
    paper: { id: null, words: 'rag 250' },
    damp: true,
    madeAt: '2026-03-01T10:00:00Z',
    ink: null,
    charges: null,
    passes: null,
    pressureEighths: null,
    packing: null,
    roller: null,
    who: null,
    photographs: [],
    eye: null,
    faults: [],
    remarks: '',
    putBy: false,
    version: 1,
    createdAt: '2026-03-01T10:00:00Z',
    changedAt: '2026-03-01T10:00:00Z',
    sample: false,
    ...more,
  };
}

const shown = (photograph: string, takenAt: string) => ({
  photograph,
  takenAt,
  ageMinutes: null,
  corners: null,
  chips: [],
});

const unknown = roomNoise([], { version: 0, typed: null });

function camera(middles: readonly number[], sigma: number) {
  const pulls = middles.map((_, i) =>
    aPull(i + 1, { photographs: [shown(`f${i}`, '2026-03-01T10:05:00Z')] }),
  );
  const tones = new Map(middles.map((value, i) => [`f${i}`, tonesOf(value)]));
  const noise = roomNoise([], { version: 1, typed: sigma });
  return workSeries({ workId: 'low-water', tolerance: 0.04, noise, pulls, tonesOf: tones });
}

describe('the series of a work', () => {
  it('read by camera as .50 .52 .51 .515 with σ 0.005 is not growing', () => {
    const { answer, pulls } = camera([0.5, 0.52, 0.51, 0.515], 0.005);
    expect(answer.state).not.toBe('growing');
    expect(answer.steady).not.toBe(false);
    expect(pulls[0]).toMatchObject({ how: 'camera', age: 5, compared: true });
  });

  it('told by eye as .20 .27 .34 is never steady, at any later pull', () => {
    const middles = [0.2, 0.27, 0.34, 0.34, 0.34, 0.34];
    for (let count = 1; count <= middles.length; count++) {
      const pulls = middles.slice(0, count).map((value, i) =>
        aPull(i + 1, {
          eye: { lights: null, middles: value, darks: null, ageMinutes: 5, who: 'J.O.' },
        }),
      );
      const { answer, sigma } = workSeries({
        workId: 'low-water',
        tolerance: 0.04,
        noise: unknown,
        pulls,
        tonesOf: new Map(),
      });
      expect(sigma).toBe(0.1);
      expect(answer.steady, `${count} pulls`).not.toBe(true);
    }
  });

  it('says what to do first where σ of the room is not known', () => {
    const pull = aPull(1, { photographs: [shown('f', '2026-03-01T10:05:00Z')] });
    const { answer, sigma } = workSeries({
      workId: 'low-water',
      tolerance: 0.04,
      noise: unknown,
      pulls: [pull],
      tonesOf: new Map([['f', tonesOf(0.5)]]),
    });
    expect([sigma, answer.steady]).toEqual([null, 'unknown']);
    expect(answer.reason).toContain('Photograph one sheet twice');
  });

  it('keeps photographs of another age apart, and of those of the latest takes the age that others share', () => {
    const fresh = '2026-03-01T10:05:00Z';
    const dry = '2026-03-03T10:00:00Z';
    const pulls = [
      aPull(1, { photographs: [shown('a', fresh)] }),
      aPull(2, { photographs: [shown('b', fresh), shown('c', dry)] }),
    ];
    const tones = new Map(['a', 'b', 'c'].map((id, i) => [id, tonesOf(0.5 + 0.1 * i)] as const));
    const series = workSeries({
      workId: 'low-water',
      tolerance: 0.04,
      noise: roomNoise([], { version: 1, typed: 0.01 }),
      pulls,
      tonesOf: tones,
    });
    expect(series.pulls.map(({ age, tones: { middles } }) => [age, middles!.value])).toEqual([
      [5, 0.5],
      [5, 0.6],
    ]);
  });
});

it('σ of the room comes from sheets read more than once at one age', () => {
  const twice = aPull(1, {
    photographs: [
      shown('a', '2026-03-01T10:05:00Z'),
      shown('b', '2026-03-01T10:06:00Z'),
      shown('c', '2026-03-03T10:00:00Z'),
    ],
  });
  const tones = new Map([
    ['a', tonesOf(0.5)],
    ['b', tonesOf(0.52)],
    ['c', tonesOf(0.45)],
  ]);
  const lists = repeatedReadings(pullGroups(twice, tones));
  expect(lists).toEqual([[0.5, 0.52]]);
  const noise = roomNoise([lists], { version: 2, typed: 0.3 });
  expect(noise).toMatchObject({ origin: 'repeats', sheets: 1, degreesOfFreedom: 1, typed: 0.3 });
  expect(noise.sigma!.value).toBeCloseTo(0.02 / Math.SQRT2, 6);
});
