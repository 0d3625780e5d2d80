import { describe, expect, it } from 'vitest';
import type { Contact, StageDone } from '../../../records/bench.ts';
import type { LineStage, RunEvent } from '../../../records/run.ts';
import { runFeatures } from './runFeatures.ts';

const spent = (seconds: number) =>
  ({ seconds, low: seconds - 2, high: seconds + 2, how: 'measured', oneClock: true }) as const;
const stage = (
  of: LineStage,
  state: StageDone['state'],
  seconds: number | null = null,
  low: number | null = null,
) =>
  ({
    stage: of,
    state,
    spent: seconds === null ? null : spent(seconds),
    expected:
      low === null ? null : { lowSeconds: low, highSeconds: null, basis: 'common practice', note: '' },
  }) as StageDone;
const contact = (name: string, seconds: number, plannedSeconds: number) =>
  ({ name, spent: spent(seconds), plannedSeconds }) as Contact;
const event = (kind: RunEvent['kind'], minute: number, of?: LineStage) =>
  ({ kind, at: new Date(minute * 60_000).toISOString(), payload: of ? { stage: of } : {} }) as RunEvent;

describe('what a run tells of suspects', () => {
  it('is nothing where nothing was logged', () => {
    expect(runFeatures({ stages: [], contacts: [] }, [])).toEqual({});
  });

  it('is how far the worst contact overran or fell short of its plan', () => {
    const { etchOverrun, etchShort } = runFeatures(
      { stages: [], contacts: [contact('mudbank', 180, 120), contact('sky', 60, 120)] },
      [],
    );
    expect(etchOverrun).toMatchObject({ value: 0.5, note: 'mudbank' });
    expect(etchShort).toMatchObject({ value: 0.5, note: 'sky' });
  });

  it('is what was skipped, and what was done', () => {
    const stages = [stage('base', 'skipped'), stage('powder', 'done'), stage('gum-border', 'open')];
    const features = runFeatures({ stages, contacts: [] }, []);
    expect(features.baseSkipped!.value).toBe(1);
    expect(features.powderSkipped!.value).toBe(0);
    expect(features).not.toHaveProperty('borderSkipped');
  });

  it('is a short roll-up', () => {
    expect(
      runFeatures({ stages: [stage('roll-up', 'done', 300, 600)], contacts: [] }, []).rollUpShort!.value,
    ).toBe(0.5);
  });

  it('is the longest pause without gum beyond a quarter of an hour', () => {
    const events = [
      event('stage-ended', 0, 'proofs'),
      event('gummed', 10),
      event('stage-ended', 60, 'proofs'),
      event('stage-started', 100, 'proofs'),
    ];
    expect(runFeatures({ stages: [], contacts: [] }, events).ungummedPause!.value).toBe(25);
    expect(runFeatures({ stages: [], contacts: [] }, events.slice(0, 2)).ungummedPause!.value).toBe(0);
  });
});
