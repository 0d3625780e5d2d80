import { describe, expect, it } from 'vitest';
import type { PouredTold } from '../../records/run.ts';
import { aPlan, logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { pouredLines } from './pouredLines.ts';
import { pouredWords } from './pouredWords.ts';

const gum = (value: number, more: Partial<PouredTold> = {}): PouredTold => ({
  material: 'gum arabic',
  how: 'measured',
  amount: { value, unit: 'ml' },
  ...more,
});

describe('what was poured', () => {
  it('counts for the stage under way unless it says another, and adds up; what is taken back does not', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'first-etch' }, { s: 0 });
    log('poured', gum(20, { mark: 5 }), { s: 10 });
    log('poured', gum(10, { how: 'remembered' }), { s: 20 });
    log('poured', gum(500), { s: 30 });
    log('undo', { clientId: events.at(-1)!.clientId }, { s: 31 });
    log('stage-ended', { stage: 'first-etch' }, { s: 300 });
    log('poured', gum(30, { stage: 'close-down' }), { s: 400 });
    const { poured } = foldRun(events, null);
    expect(poured.map(({ stage, amount }) => [stage, amount?.low, amount?.high])).toEqual([
      ['first-etch', 17.5, 22.5],
      ['first-etch', 5, 15],
      ['close-down', null, null],
    ]);
    expect(pouredLines(poured, null)).toMatchObject([
      { stage: 'first-etch', plannedMl: null, amounts: [{ value: 30, low: 22.5, high: 37.5 }] },
      { stage: 'close-down', amounts: [{ value: 30, low: null, high: null }] },
    ]);
  });

  it('stands beside the plan; what nobody logged has no amount, and what nobody measured says so', () => {
    const need = { filmMl: 1, ml: 20, grams: null, zones: [] };
    const batches = ['gum arabic', 'tannic solution'].map((material) => ({ ...need, material }));
    const plan = { ...aPlan().plan, batches };
    const { events, log } = logOf();
    log('stage-started', { stage: 'first-etch' }, { s: 0 });
    const [first, second] = plan.batches;
    log('poured', { material: first!.material, how: 'not measured', amount: null }, { s: 10 });
    const lines = pouredLines(foldRun(events, { first: plan, seconds: [] }).poured, plan);
    expect(lines[0]).toMatchObject({ plannedMl: first!.ml, amounts: [], alsoUnmeasured: true });
    expect(lines[1]).toMatchObject({ plannedMl: second!.ml, amounts: [], alsoUnmeasured: false, logged: [] });
  });

  it('is said with its ± or with that nobody knows it', () => {
    expect(pouredWords(gum(20, { mark: 5 }))).toBe('gum arabic: 20 ml ± 2.5, measured');
    expect(pouredWords(gum(20, { how: 'as planned' }))).toBe('gum arabic: 20 ml, ± unknown, as planned');
    expect(pouredWords({ material: 'talc', how: 'not measured', amount: null })).toBe(
      'talc: used, not measured',
    );
  });
});
