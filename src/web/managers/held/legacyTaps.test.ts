import { expect, it } from 'vitest';
import { legacyTaps } from './legacyTaps.ts';

function shelfOf(entries: Readonly<Record<string, string>>) {
  const keys = Object.keys(entries);
  return {
    length: keys.length,
    key: (index: number) => keys[index] ?? null,
    getItem: (key: string) => entries[key] ?? null,
  };
}

it('finds what earlier screens left unsent, in order, and tells press from bench', () => {
  const shelf = shelfOf({
    'stonetone-device': 'phone',
    'stonetone-unsent-run': '[{"clientId":"a","kind":"laid"},{"clientId":"b","kind":"note"}]',
    'stonetone-unsent-edition': '[{"clientId":"c","kind":"note"},{"clientId":"d","kind":"charged"}]',
    'stonetone-unsent-broken': '[{',
    'stonetone-unsent-odd': '[null,7]',
  });
  expect(
    legacyTaps(shelf).map(({ key, taps }) => [
      key,
      taps.map(({ of, log, clientId }) => `${of} ${log} ${clientId}`),
    ]),
  ).toEqual([
    ['stonetone-unsent-run', ['run run a', 'run run b']],
    ['stonetone-unsent-edition', ['ledger edition c', 'ledger edition d']],
    ['stonetone-unsent-odd', []],
  ]);
});

it('finds nothing where storage is forbidden', () => {
  const shelf = {
    length: 1,
    key: (): string => {
      throw new Error('forbidden');
    },
    getItem: () => null,
  };
  expect(legacyTaps(shelf)).toEqual([]);
});
