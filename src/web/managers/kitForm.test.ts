import { describe, expect, it } from 'vitest';
import { kitDraftSchema } from '../../contract/kit.ts';
import { kitFields, kitOfTyped, kitTyped } from './kitForm.ts';

const tools = Object.keys(kitFields) as (keyof typeof kitFields)[];

describe('a new tool as it is typed', () => {
  it.each(tools)('%s: a name is enough, and what is empty is not known', (tool) => {
    const { draft } = kitOfTyped(tool, { name: ' Heron ' });
    expect(draft).toEqual(kitDraftSchema.parse({ tool, name: 'Heron' }));
    expect(kitOfTyped(tool, {}).draft).toBeNull();
  });

  it('reads numbers with comma or point, days and yes or no, and says what it can not read', () => {
    const ink = kitOfTyped('ink', { name: 'Black', softParts: '70', modifierPercent: '1,5' });
    expect(ink.draft).toMatchObject({ softParts: 70, stiffParts: null, modifierPercent: 1.5 });
    expect(kitOfTyped('paper', { name: 'Rag', damp: 'no' }).draft).toMatchObject({ damp: false });
    const bad = kitOfTyped('press', { name: 'Press', pressureEighths: 'six' });
    expect(bad).toMatchObject({ draft: null, troubles: { pressureEighths: 'A number from -80 to 80.' } });
  });
  it.each(tools)('%s: as it is kept and typed again, nothing is lost', (tool) => {
    const typed = { name: 'Heron', note: 'of the shed', nap: 'rough', conditionedOn: '2026-02-03' };
    const all = { ...typed, widthMm: '300', softParts: '7', stringCm: '1.5', packing: 'two sheets' };
    const { draft } = kitOfTyped(tool, { ...all, pressureEighths: '-3', cloth: 'muslin', damp: 'no' });
    const kept = { id: 'x', putBy: false, version: 2, createdAt: '', changedAt: '', sample: false };
    expect(kitOfTyped(tool, kitTyped({ ...draft!, ...kept })).draft).toEqual(draft);
  });
});
