import { expect, it } from 'vitest';
import { z } from 'zod';
import { fieldPath, issueReason } from './fieldPath.ts';

const schema = z.object({
  people: z.union([z.literal(1), z.literal(2)]),
  table: z.union([z.string(), z.object({ rows: z.array(z.object({ name: z.string().min(1) })).min(2) })]),
  angle: z.number().positive().max(90).optional(),
  kind: z.enum(['light', 'dark']).optional(),
});

it.each([
  [{ table: 'a' }, 'people', 'it is none of the forms known here at people'],
  [{ people: 1 }, 'table', 'it is none of the forms known here at table'],
  [{ people: 1, table: { rows: [] } }, 'table.rows', 'it must have at least 2 entries at table.rows'],
  [{ people: 1, table: { rows: [{}, {}] } }, 'table.rows[0].name', 'a text is missing at table.rows[0].name'],
  [
    { people: 1, table: { rows: [{ name: '' }, { name: 'b' }] } },
    'table.rows[0].name',
    'it must have at least 1 character at table.rows[0].name',
  ],
  [{ people: 1, table: 'a', angle: '9' }, 'angle', 'it is not a number at angle'],
  [{ people: 1, table: 'a', angle: 0 }, 'angle', 'it must be more than 0 at angle'],
  [{ people: 1, table: 'a', angle: 91 }, 'angle', 'it must be at most 90 at angle'],
  [{ people: 1, table: 'a', kind: 'grey' }, 'kind', 'it is none of light, dark at kind'],
  [[], '', 'it is not an object'],
])('%j: the field is %s', (value, path, reason) => {
  const { error } = schema.safeParse(value);
  expect(fieldPath(error!)).toBe(path);
  expect(issueReason(error!)).toBe(reason);
});
