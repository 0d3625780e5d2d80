import { expect, it } from 'vitest';
import { acidInGumTable } from './acidInGumTable.ts';
import { etchOfLevel } from './etchOfLevel.ts';
import { tannicTable } from './tannicTable.ts';

const tannic = (level: string) => etchOfLevel(level, tannicTable);

it('finds the etch that the words of a level stand for', () => {
  expect(tannic('None')).toEqual({ row: null, takenFor: 'nothing laid' });
  expect(tannic('Gum alone')!.row).toMatchObject({ strength: 'light', contactSeconds: { wanted: 120 } });
  expect(tannic('tannic')!.row!.name).toBe('tannic solution');
  expect(tannic('gum and tannic 1:2')!.row).toMatchObject({
    strength: 'middle',
    recipe: {
      parts: [
        { material: 'gum', parts: 1 },
        { material: 'tannic solution', parts: 2 },
      ],
    },
  });
  expect(tannic('gum alone 5 min')!.row!.contactSeconds).toEqual({ low: 270, wanted: 300, high: 330 });
  expect(etchOfLevel('8 drops', acidInGumTable)!.row).toMatchObject({
    strength: 'middle',
    recipe: { dropsPer30Ml: { low: 8, high: 8 } },
  });
});

it('says nothing of what nobody here knows, and takes what the test says of its own', () => {
  expect(tannic('river mud')).toBeNull();
  expect(tannic('gum and mud')).toBeNull();
  expect(tannic('8 drops'), 'no acid on this route').toBeNull();
  const own = {
    level: 'river mud',
    parts: [{ material: 'mud', parts: 1 }],
    strength: 'dark',
    contactSeconds: 60,
  } as const;
  expect(etchOfLevel('river mud', tannicTable, [own])!.row).toMatchObject({
    moveWithinSeconds: 30,
    contactSeconds: { low: 54, wanted: 60, high: 66 },
    basis: { basis: 'typed' },
  });
});
