import { describe, expect, it } from 'vitest';
import { logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { lineCourse } from './lineCourse.ts';
import { lineRule, lineStages } from './lineStages.ts';
import { stageCautions } from './stageCautions.ts';
import { stageDone } from './stagesDone.ts';

const courseOf = (events: ReturnType<typeof logOf>['events']) =>
  lineCourse(foldRun(events, null).stages.map(stageDone), 'drawn');

describe('where a run stands in the line', () => {
  it('follows from the work before anything is logged, then from the log', () => {
    const { events, log } = logOf();
    expect(courseOf(events)).toMatchObject({ open: null, next: 'powder' });
    log('stage-started', { stage: 'washout' }, { s: 0 });
    expect(courseOf(events)).toMatchObject({ open: { stage: 'washout' }, next: 'base' });
    log('stage-ended', { stage: 'washout' }, { s: 90 });
    expect(courseOf(events)).toMatchObject({ open: null, last: { stage: 'washout' }, next: 'base' });
    log('skipped', { stage: 'base', words: 'no lacquer today' }, { s: 95 });
    expect(courseOf(events).next).toBe('water');
  });

  it('a correction comes between and leaves the line where it was', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'proofs' }, { s: 0 });
    log('stage-started', { stage: 'hone', words: 'post' }, { s: 60 });
    expect(courseOf(events)).toMatchObject({ open: { stage: 'hone' }, last: { stage: 'proofs' } });
    log('stage-ended', { stage: 'hone' }, { s: 100 });
    expect(courseOf(events)).toMatchObject({ open: { stage: 'proofs' }, next: 'good-to-print' });
  });

  it('leads from the first stage to the last without a circle', () => {
    let stage = lineStages[0]!.stage;
    const seen = new Set([stage]);
    for (let next = lineRule(stage).next; next !== null; next = lineRule(stage).next) {
      expect(seen.has(next), next).toBe(false);
      seen.add(next);
      stage = next;
    }
    expect(stage).toBe('regrain');
  });
});

it('every stage with rosin, solvent or acid says what to mind', () => {
  for (const stage of ['powder', 'second-powder'] as const)
    expect(stageCautions(stage)[0]).toContain('Rosin');
  for (const stage of ['washout', 'base', 'second-washout', 'second-base'] as const) {
    expect(stageCautions(stage).join(' ')).toMatch(/Solvent.*metal can/);
  }
  for (const stage of ['first-etch', 'second-etch', 'second-etch-quick', 'spot-etch'] as const) {
    expect(stageCautions(stage).join(' ')).toContain('Acid INTO gum');
  }
});
