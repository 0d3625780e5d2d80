import type { Random } from '../../../src/foundation/random.ts';
import { oneOf, wholeBetween } from './choose.ts';

function nested(depth: number): unknown {
  let value: unknown = [];
  for (let level = 0; level < depth; level++) value = [value];
  return value;
}

/** What a field may get and hardly any field wants. */
const values: readonly unknown[] = [
  null,
  true,
  '',
  ' ',
  '\u0000',
  'a\u0000b',
  '\ud800',
  '\u202e\u2066',
  'x'.repeat(100_000),
  '../../../etc/passwd',
  "'; DROP TABLE stones; --",
  '{file} %s',
  '<script>x</script>',
  '2026-02-30',
  '2026-02-30T25:61:00Z',
  '+275760-09-14T00:00:00Z',
  'NaN',
  '1e999',
  '-0',
  -1,
  -0,
  0,
  0.1,
  1e-320,
  1e308,
  -1e308,
  2 ** 53,
  2 ** 63,
  -(2 ** 31) - 1,
  [],
  {},
  [null],
  { id: null },
  { constructor: 1, toString: 2 },
  nested(200),
];

/** A value that hardly any field wants, in a copy of its own. */
export function hostileValue(random: Random): unknown {
  return structuredClone(oneOf(random, values));
}

type Place = { readonly holder: Record<string | number, unknown>; readonly key: string | number };

function placesIn(value: unknown, found: Place[] = []): Place[] {
  if (typeof value !== 'object' || value === null) return found;
  for (const [key, inner] of Object.entries(value)) {
    found.push({ holder: value as Record<string, unknown>, key });
    placesIn(inner, found);
  }
  return found;
}

/** A copy of a JSON value with one to three of its places spoiled: replaced, left out, doubled or swapped. */
export function brokenValue(sound: unknown, random: Random): unknown {
  if (random() < 0.08) return hostileValue(random);
  const copy = { root: structuredClone(sound) } as Record<string, unknown>;
  const times = wholeBetween(random, 1, 3);
  for (let time = 0; time < times; time++) {
    const places = placesIn(copy);
    const { holder, key } = oneOf(random, places);
    const other = oneOf(random, places);
    const shape = random();
    if (shape < 0.6) holder[key] = hostileValue(random);
    else if (shape < 0.75) {
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else if (holder !== copy) delete holder[key];
    } else if (shape < 0.85) holder[key] = structuredClone([holder[key], holder[key]]);
    else if (shape < 0.95) holder[key] = structuredClone(other.holder[other.key]);
    else if (!Array.isArray(holder)) holder[`unknown ${time}`] = hostileValue(random);
  }
  return copy.root;
}

/** The text of a JSON body, spoiled as text: cut, with bytes changed, or not JSON at all. */
export function brokenText(text: string, random: Random): Buffer {
  const bytes = Buffer.from(text);
  switch (wholeBetween(random, 0, 6)) {
    case 0:
      return bytes.subarray(0, wholeBetween(random, 0, bytes.length));
    case 1:
      for (let time = 0; time < 4 && bytes.length > 0; time++) {
        bytes[wholeBetween(random, 0, bytes.length - 1)] = wholeBetween(random, 0, 255);
      }
      return bytes;
    case 2:
      return Buffer.concat([bytes, bytes]);
    case 3:
      return Buffer.from(`{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}`);
    case 4:
      return Buffer.from('['.repeat(50_000));
    case 5:
      return Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]);
    default:
      return Buffer.from(oneOf(random, ['', 'null', '1', '"text"', '<xml/>', 'a=1&b=2', '{"a":1e999}']));
  }
}
