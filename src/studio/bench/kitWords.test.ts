import { expect, it } from 'vitest';
import { kitWords } from './kitWords.ts';

it('says what is known of a tool, and leaves out what is not', () => {
  expect(
    kitWords({ tool: 'roller', name: 'Heron', nap: 'leather', conditionedOn: null, widthMm: 350, note: '' }),
  ).toBe('Heron, leather, 350 mm, conditioned: not known');
  const roller = { tool: 'roller', name: 'Heron', nap: 'rough', widthMm: null, note: '' } as const;
  expect(kitWords({ ...roller, conditionedOn: '2026-02-20' })).toBe('Heron, rough, conditioned 20 Feb 2026');
  const ink = { tool: 'ink', name: 'Black', softParts: 70, stiffParts: 30, note: '' } as const;
  expect(kitWords({ ...ink, modifierPercent: 2, stringCm: null })).toBe(
    'Black, 70:30 soft:stiff, 2 % modifier',
  );
  const press = { tool: 'press', name: 'Shed press', packing: '', scraperMm: null, note: '' } as const;
  expect(kitWords({ ...press, pressureEighths: -2 })).toBe('Shed press, −2/8 from contact');
  expect(kitWords({ ...press, pressureEighths: 0 })).toBe('Shed press, 0/8 from contact');
  expect(kitWords({ tool: 'paper', name: 'Rag', gramsPerM2: null, damp: null, note: '' })).toBe('Rag');
});
