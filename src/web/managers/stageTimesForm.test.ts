import { describe, expect, it } from 'vitest';
import type { RoomTime } from '../../records/studio.ts';
import { handStages, timeFields, timesOf, timeTroubles } from './stageTimesForm.ts';

const edition: RoomTime = { stage: 'edition', lowMinutes: 180, highMinutes: 300, people: 2 };

describe('how long stages take, as it is typed', () => {
  it('comes back as it was kept, and a line without a stage is taken out', () => {
    expect(timesOf({ ...timeFields(0, edition), ...timeFields(1, null) })).toEqual([edition]);
  });

  it('names what can not be', () => {
    const typed = {
      ...timeFields(0, edition),
      ...timeFields(1, edition),
      'time1.high': '90',
      'time0.low': 'x',
    };
    expect(timeTroubles(typed)).toEqual({
      'time0.stage': null,
      'time0.low': 'A number from 1 to 30000.',
      'time0.high': null,
      'time1.stage': 'This stage has a line above.',
      'time1.low': null,
      'time1.high': 'At most is less than at least.',
    });
    expect(timeTroubles({ ...timeFields(0, edition), 'time0.low': '1.5' })['time0.low']).toBe(
      'A whole number.',
    );
  });

  it('offers every stage under a name of its own', () => {
    expect(new Set(handStages.map(([, name]) => name)).size).toBe(handStages.length);
  });
});
