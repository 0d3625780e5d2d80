import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { fromInchText, inchText, inchUnitOf, lengthWords, sizeWords } from './lengths.ts';
import { setWordsInUse } from './wordsInUse.ts';

const metric = { language: 'en', units: 'metric', dates: 'en-GB', sentences: {} } as const;
afterEach(() => setWordsInUse(metric));

test.each([25.4, 2.54, 6.4516])('what is kept comes back as it was kept, by %f to the inch', (per) => {
  fc.assert(
    fc.property(fc.integer({ min: -3_000_000_000, max: 3_000_000_000 }), (millionths) => {
      const kept = millionths / 1e6;
      expect(fromInchText(inchText(kept, per), per)).toBe(kept);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 300_000 }), (hundredths) => {
      const text = inchText(hundredths / 100, per);
      expect(fromInchText(text, per)).toBe(hundredths / 100);
      expect(text.length).toBeLessThanOrEqual(10);
    }),
  );
});

test('inches are typed as a printer says them', () => {
  expect(fromInchText('11 13/16', 25.4)).toBe(300.04);
  expect(fromInchText('1/2', 25.4)).toBe(12.7);
  expect(fromInchText('11,81', 25.4)).toBe(299.97);
  expect(fromInchText('11.811', 25.4)).toBe(300);
  expect(inchText(300, 25.4)).toBe('11.811');
  for (const no of ['', 'a', '1/0', '1 2', '--1']) expect(fromInchText(no, 25.4)).toBeNaN();
});

test('lengths are shown in the unit that is chosen', () => {
  expect(lengthWords(300)).toBe('300 mm');
  expect(sizeWords(300, 400.04)).toBe('300 × 400 mm');
  expect(inchUnitOf('mm')).toBeNull();
  setWordsInUse({ ...metric, language: 'de', units: 'inch' });
  expect(lengthWords(300)).toBe('11,81 in');
  expect(sizeWords(300, 400)).toBe('11,811 × 15,748 in');
  expect(inchUnitOf('ml')).toBeNull();
  expect(inchUnitOf('cm²')?.unit).toBe('in²');
});
