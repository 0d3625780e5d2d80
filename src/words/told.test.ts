import { afterEach, expect, test } from 'vitest';
import catalogue from './catalogue/told/de.json' with { type: 'json' };
import { isTold, told } from './told.ts';
import { setWordsInUse } from './wordsInUse.ts';

const english = { language: 'en', units: 'metric', dates: 'en-GB', sentences: {} } as const;
afterEach(() => setWordsInUse(english));

test('English is told as it comes', () => {
  expect(told('first etch')).toBe('first etch');
});

test('a sentence is found whole, or by one with places, whose fillings are looked up too', () => {
  setWordsInUse({ ...english, language: 'de', told: catalogue });
  expect(told('first etch')).toBe('erste Ätze');
  expect(told('see whether it is gummed, then: washout')).toBe(
    'nachsehen, ob er gummiert ist, dann: auswaschen',
  );
  expect(told('Pull 4 has no measured photograph yet.')).toBe('Abzug 4 hat noch kein gemessenes Foto.');
  expect(told('Nobody translated this.')).toBe('Nobody translated this.');
});

test('a figure in a sentence has the comma of the language', () => {
  setWordsInUse({ ...english, language: 'de', told: catalogue });
  expect(
    told(
      'a prints 0.05 lighter than b (coverage printed; −0.07 to −0.03 with all differences taken together).',
    ),
  ).toBe(
    'a druckt 0,05 heller als b (gedruckte Deckung; −0,07 bis −0,03 alle Unterschiede zusammengenommen).',
  );
});

test('a name in quotation marks stays as it is typed', () => {
  setWordsInUse({ ...english, language: 'de', told: catalogue });
  expect(told('crayon')).toBe('Kreide');
  expect(
    told(
      '“crayn” is no medium of the catalogue. The nearest that is known is “crayon”. Put it right, or say that it is a new one.',
    ),
  ).toBe(
    '„crayn“ ist kein Mittel des Verzeichnisses. Das Nächste, was bekannt ist, ist „crayon“. Berichtigen, oder sagen, dass es etwas Neues ist.',
  );
});

test('clauses with a semicolon between are told, however many there are', () => {
  setWordsInUse({
    ...english,
    language: 'de',
    told: {
      ...catalogue,
      'Here: {told}.': 'Hier: {told}.',
      'under {a}; under {b}': 'unter {a}; unter {b}',
      'under {etch} holds ({count})': 'unter {etch} hält ({count})',
      'under {etch} open ({count})': 'unter {etch} offen ({count})',
    },
  });
  expect(
    told(
      'Here: under gum alone holds (5 of 5 stones); under X open (1 of 2 stones). The etch table has no rule for Y: test a patch first.',
    ),
  ).toBe(
    'Hier: unter Gummi allein hält (5 von 5 Steinen); unter X offen (1 von 2 Steinen). Die Ätztabelle hat keine Regel für Y: zuerst ein Probefeld.',
  );
});

test('several sentences are told one by one; a list in a place each by itself', () => {
  setWordsInUse({
    ...english,
    language: 'de',
    told: {
      'the {tone} by {value}': 'die {tone} um {value}',
      'Growing: {listChanges}.': 'Wächst: {listChanges}.',
      'between {figureLow} and {high}': 'zwischen {figureLow} und {high}',
      lights: 'Lichter',
      darks: 'Tiefen',
      'it stayed': 'es blieb',
    },
  });
  expect(told('Growing: the lights by 0.04, the darks by −0.2 mm and the darks by 3. It stayed.')).toBe(
    'Wächst: die Lichter um 0,04, die Tiefen um −0,2 mm und die Tiefen um 3. Es blieb.',
  );
  expect(told('between 0.5 and 7')).toBe('zwischen 0,5 und 7');
  expect(isTold('between you and me')).toBe(false);
  expect(isTold('It stayed')).toBe(true);
});

test('a translation has the places of what it translates', () => {
  const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).toSorted();
  for (const [told, german] of Object.entries(catalogue)) expect(places(german), told).toEqual(places(told));
});
