import { expect, it } from 'vitest';
import type { HazardClass, Material } from '../../records/material.ts';
import { hazardsTold, keptApart } from './hazardWords.ts';

function material(name: string, hazards: readonly HazardClass[] | null): Material {
  return {
    id: name,
    name,
    hazards,
    stages: [],
    statements: '',
    sheetDate: null,
    sheetPlace: '',
    limitMgPerM3: null,
    flashPointC: null,
    gramsPerMl: null,
    protection: '',
    firstAid: '',
    storage: '',
    waste: '',
    note: '',
    putBy: false,
    version: 1,
    createdAt: '2026-03-01T00:00:00Z',
    changedAt: '2026-03-01T00:00:00Z',
    sample: false,
  };
}

it('tells the most pressing first, and never takes an unread sheet for a harmless one', () => {
  expect(hazardsTold({ hazards: ['irritant', 'flammable'] })).toBe('burns, irritates');
  expect(hazardsTold({ hazards: null })).toMatch(/not read: treat as dangerous/);
  expect(hazardsTold({ hazards: [] })).toMatch(/states no hazard class/);
});

it('names what must be kept apart', () => {
  const acid = material('nitric acid', ['oxidising', 'corrosive']);
  const spirit = material('white spirit', ['flammable']);
  expect(keptApart([acid, spirit])).toEqual([
    expect.stringMatching(/^“nitric acid” and “white spirit”: .*take fire/),
  ]);
  expect(keptApart([acid])).toEqual([]);
});
