import { describe, expect, it } from 'vitest';
import { exceptionsText, hoursText, typedExceptions, typedHours } from './hoursTyped.ts';

describe('hours', () => {
  it('are read as people write them, and written one way', () => {
    const both = [
      { from: '09:00', to: '13:00' },
      { from: '14:00', to: '17:30' },
    ];
    expect(typedHours('9-13, 14–17.30')).toEqual(both);
    expect(typedHours(hoursText(both))).toEqual(both);
    expect(typedHours('0-24')).toEqual([{ from: '00:00', to: '24:00' }]);
    for (const none of ['', '  ', 'closed', 'Away']) expect(typedHours(none), none).toEqual([]);
  });

  it('that can’t be are none of ours', () => {
    for (const wrong of ['9', '17-9', '9-9', '9-25', '9:70-10', '9-12-14', '9-13, 12-14', 'nine to five']) {
      expect(typedHours(wrong), wrong).toBeNull();
    }
  });
});

describe('days that differ', () => {
  it('keep their notes', () => {
    const kept = [{ date: '2026-12-25', hours: [], note: 'high tide' }];
    expect(typedExceptions('2026-12-25 closed; 2026-12-28 10-12', kept)).toEqual([
      ...kept,
      { date: '2026-12-28', hours: [{ from: '10:00', to: '12:00' }], note: '' },
    ]);
    expect(typedExceptions(exceptionsText(kept), kept)).toEqual(kept);
    expect(typedExceptions('')).toEqual([]);
    for (const wrong of ['Christmas', '2026-13-01 closed', '2026-12-25; 2026-12-25', '2026-12-25 late']) {
      expect(typedExceptions(wrong), wrong).toBeNull();
    }
  });
});
