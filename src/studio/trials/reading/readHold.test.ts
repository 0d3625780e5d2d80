import { describe, expect, it } from 'vitest';
import { holdAt, readHold } from './readHold.ts';

const of = (coverage: number, half = 0.01) => ({ coverage, low: coverage - half, high: coverage + half });

describe('what became of a patch', () => {
  it.each([
    [0.5, 0.2, 'lost'],
    [0.5, 0.21, 'weak'],
    [0.5, 0.44, 'weak'],
    [0.5, 0.46, 'held'],
    [0.5, 0.9, 'held'],
    [0.5, 0.93, 'filled'],
    [0.9, 0.97, 'held'],
    [0.08, 0.055, 'weak'],
    [0.08, 0.065, 'held'],
  ] as const)('drawn %d, printed %d: %s', (drawn, printed, hold) => {
    expect(holdAt(drawn, printed)).toBe(hold);
  });

  it('is sure where the intervals all say the same, and names what else could be', () => {
    expect(readHold('image', of(0.5), of(0.48))).toMatchObject({
      hold: 'held',
      least: 'held',
      most: 'held',
      why: null,
    });
    expect(readHold('control', of(0.5), of(0.45, 0.03))).toMatchObject({
      hold: 'held',
      least: 'weak',
      most: 'held',
    });
    expect(readHold('image', of(0.5), of(0.21, 0.3))).toMatchObject({
      hold: 'weak',
      least: 'lost',
      most: 'held',
    });
  });

  it('says how much was kept, with both errors', () => {
    const { kept } = readHold('image', of(0.5, 0.02), of(0.25, 0.02));
    expect(kept?.value).toBe(0.5);
    expect(kept?.high).toBeCloseTo(0.5 + Math.hypot(0.04, 0.02), 12);
  });

  it('never counts a guide line or a stop-out as lost', () => {
    expect(readHold('guide', of(0.3), of(0.01))).toMatchObject({ hold: null, mark: 'vanished', why: null });
    expect(readHold('guide', of(0.3), of(0.3))).toMatchObject({ hold: null, mark: 'shows' });
    expect(readHold('stop-out', of(0), of(0.01))).toMatchObject({ hold: null, mark: 'bare', why: null });
    expect(readHold('stop-out', of(0), of(0.2))).toMatchObject({ hold: null, mark: 'printed' });
  });

  it('says why it does not judge', () => {
    expect(readHold('image', null, of(0.5)).why).toContain('on the stone');
    expect(readHold('image', of(0.5), null).why).toContain('sheet');
    expect(readHold('image', of(0.02), of(0.5))).toMatchObject({ hold: null, kept: null });
    expect(readHold('image', of(0.02), of(0.5)).why).toContain('too faint');
  });
});
