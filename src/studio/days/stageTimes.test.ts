import { expect, test } from 'vitest';
import { stagesOfLine } from '../../records/run.ts';
import { stageTime } from './stageTimes.ts';

const work = { faceCm2: 2000, firstEtch: null, times: [] };

test('good to print and an edition take two; drawing, graining and printing may go on another day', () => {
  const which = (asked: (stage: (typeof stagesOfLine)[number]) => boolean) => stagesOfLine.filter(asked);
  expect(which((stage) => stageTime(stage, work).people === 2)).toEqual(['good-to-print', 'edition']);
  expect(which((stage) => stageTime(stage, work).mayBreak).toSorted()).toEqual([
    'draw',
    'edition',
    'grain',
    'level',
    'redraw',
    'regrain',
  ]);
});

test('what was typed for a stage goes before all else, its people too', () => {
  const typed = { stage: 'edition', lowMinutes: 60, highMinutes: 90, people: 1 } as const;
  expect(stageTime('edition', { ...work, times: [typed] })).toEqual({
    hands: { lowMinutes: 60, highMinutes: 90, basis: 'typed', note: 'as typed here' },
    people: 1,
    mayBreak: true,
  });
});

test('a planned first etch takes its clock with laying out and clearing away, and as many as it was planned for', () => {
  const { hands, people, mayBreak } = stageTime('first-etch', {
    ...work,
    firstEtch: { seconds: 630, people: 2 },
  });
  expect([hands.lowMinutes, hands.highMinutes, people, mayBreak]).toEqual([36, 61, 2, false]);
});
