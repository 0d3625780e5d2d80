import { describe, expect, it } from 'vitest';
import { logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { workStageTold } from './workStageTold.ts';

const told = (events: ReturnType<typeof logOf>['events']) => workStageTold(foldRun(events, null).stages);

describe('the stage that a log puts its work into', () => {
  it('is the last that ended; what only waits, airs or corrects moves nothing', () => {
    const { events, log } = logOf();
    expect(told(events)).toBeNull();
    log('stage-started', { stage: 'first-etch' }, { s: 0 });
    expect(told(events)).toBeNull();
    log('stage-ended', { stage: 'first-etch' }, { s: 300 });
    log('stage-started', { stage: 'first-rest' }, { s: 310 });
    log('correction', { stage: 'hone' }, { s: 320 });
    expect(told(events)).toBe('first-etch');
    log('remembered', { stage: 'washout', seconds: 120 }, { s: 90_000 });
    expect(told(events)).toBe('washed-out');
  });

  it('moves once prints are pulled, is not moved by what was skipped, and goes back with an undo', () => {
    const { events, log } = logOf();
    log('stage-ended', { stage: 'roll-up' }, { s: 0 });
    log('skipped', { stage: 'trial-proofs' }, { s: 5 });
    expect(told(events)).toBe('rolled-up');
    const begun = log('stage-started', { stage: 'proofs' }, { s: 10 });
    expect(told(events)).toBe('proofs');
    log('undo', { clientId: begun.clientId }, { s: 12 });
    expect(told(events)).toBe('rolled-up');
  });
});
