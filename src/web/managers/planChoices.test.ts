import { expect, it } from 'vitest';
import { planChoicesSchema } from '../../contract/keptPlan.ts';
import { acidInGumTable } from '../../studio/etch/acidInGumTable.ts';
import { tannicTable } from '../../studio/etch/tannicTable.ts';
import { startingChoices, usesTannic, withTannic } from './planChoices.ts';

it('starts where the server starts', () => {
  expect(planChoicesSchema.parse({})).toEqual(startingChoices);
});

it('says of the tannic solution what was typed, and nothing where all is taken back', () => {
  const typed = withTannic({ ...startingChoices, tannicBatchId: 'b1' }, { pH: 3.2 });
  expect(typed).toMatchObject({ tannicBatchId: null, tannic: { gramsPerLitre: null, pH: 3.2, gum: null } });
  expect(withTannic(typed, { pH: null }).tannic).toBeNull();
});

it('knows which tables need a tannic solution', () => {
  expect([tannicTable, acidInGumTable].map(usesTannic)).toEqual([true, false]);
});
