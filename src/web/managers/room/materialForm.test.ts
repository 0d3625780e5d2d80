import { expect, it } from 'vitest';
import { materialDraftSchema } from '../../../contract/material.ts';
import type { Material } from '../../../records/material.ts';
import { materialOfTyped, materialTroubles, materialTyped } from './materialForm.ts';

it('a sheet that was not read stays unread, whatever is ticked', () => {
  const typed = { ...materialTyped(null), name: ' Rosin ', hazards: 'sensitising', stages: 'powder' };
  expect(materialOfTyped(typed)).toMatchObject({ name: 'Rosin', hazards: null, stages: ['powder'] });
  expect(materialOfTyped({ ...typed, read: 'yes' }).hazards).toEqual(['sensitising']);
  expect(materialOfTyped({ ...typed, read: 'yes', hazards: '' }).hazards).toEqual([]);
});

it('what was typed is what the server takes, and comes back as it was', () => {
  const typed = {
    ...materialTyped(null),
    name: 'Spirit',
    read: 'yes',
    hazards: 'flammable irritant',
    flashPointC: '62',
  };
  expect(materialTroubles(typed)).toEqual({
    name: null,
    limitMgPerM3: null,
    flashPointC: null,
    gramsPerMl: null,
  });
  const draft = materialOfTyped(typed);
  expect(materialDraftSchema.parse(draft)).toEqual(draft);
  expect(materialTyped({ ...draft, id: 'a' } as Material)).toEqual(typed);
});

it('says what is wrong', () => {
  const troubles = materialTroubles({ ...materialTyped(null), gramsPerMl: '9', flashPointC: 'warm' });
  expect(troubles.name).toMatch(/needed/);
  expect(troubles.gramsPerMl).toMatch(/3/);
  expect(troubles.flashPointC).toMatch(/number/);
});
