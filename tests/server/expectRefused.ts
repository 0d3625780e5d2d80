import { expect } from 'vitest';
import type { Refusal, StudioUnderTest } from './studioUnderTest.ts';

/** What is sent, and the code and path that it must be refused with. */
export type Bad = readonly [body: object, code: string, path: string];

/** All that is kept and could be changed by a bad request. */
async function everythingKept(studio: StudioUnderTest): Promise<unknown> {
  const lists = ['stones', 'works', 'batches', 'media', 'etch-tables'].map((list) =>
    studio.json<object>(`/api/${list}${list === 'media' || list === 'etch-tables' ? '' : '?putBy=all'}`),
  );
  return Promise.all(lists);
}

/** Sends each bad body; the answer is one sentence with the path to the field, and nothing that is kept changes. */
export async function expectRefused(
  studio: StudioUnderTest,
  [method, path]: readonly [string, string],
  bad: readonly Bad[],
): Promise<void> {
  const before = await everythingKept(studio);
  for (const [body, code, field] of bad) {
    const answer = await studio.send<Refusal>(method, path, body);
    const said = JSON.stringify([body, answer.body]).slice(0, 600);
    expect.soft([answer.body.code, answer.body.path], said).toEqual([code, field]);
    expect.soft(answer.status, said).toBeGreaterThanOrEqual(400);
    expect.soft(answer.status, said).toBeLessThan(500);
    expect.soft(answer.body.message, said).toMatch(/^[A-Z][^{}]*\.$/);
    expect.soft(answer.body.message, said).not.toMatch(/undefined|null|NaN|Invalid|expected|\[object/);
    expect.soft(answer.body.remedy, said).toMatch(/^[A-Z][^{}]*\.$/);
  }
  expect(await everythingKept(studio)).toEqual(before);
}
