import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it } from 'vitest';
import type { ComparisonEntry, PhotographEntry } from '../../src/records/comparisonEntry.ts';
import type { TestStoneReading } from '../../src/records/patchReading.ts';
import type { PullEntry } from '../../src/records/pullTones.ts';
import { layGrid } from '../../src/studio/trials/reading/layGrid.ts';
import { aPicture, folderUnderTest, postJson, serverUnderTest } from '../server/serverUnderTest.ts';
import { killServer, serveInProcess } from './serverProcess.ts';

const ended = /^(measured|refused|not-done)$/;
const grid = {
  rows: 1,
  columns: 2,
  originMm: [20, 20],
  squareMm: [40, 40],
  gutterMm: [10, 10],
  turnDegrees: 0,
  steps: 1,
} as const;
const patches = layGrid(grid).map((patch) => ({ ...patch, treatment: { medium: 'crayon' } }));

it('killed while it reads a pull, with a comparison and a test stone waiting, it ends all three after the next start', async () => {
  const dataFolder = await folderUnderTest();
  const { server, address } = await serveInProcess(dataFolder);
  const ask = async <T>(path: string, init?: RequestInit): Promise<T> => {
    const answer = await fetch(address + path, init);
    const text = await answer.text();
    expect(answer.ok, `${path}: ${text}`).toBe(true);
    return JSON.parse(text) as T;
  };
  const photograph = async (name: string, shade: number) => {
    const form = new FormData();
    form.append('photograph', new Blob([(await aPicture(shade)) as Uint8Array<ArrayBuffer>]), name);
    return (await ask<PhotographEntry>('/api/photographs', { method: 'POST', body: form })).id;
  };
  const send = <T extends { id: string }>(path: string, body: object) => ask<T>(path, postJson(body));
  const [drawn, print] = [await photograph('stone.png', 1), await photograph('print.png', 2)];
  const corners = {
    of: 'rectangle',
    px: [
      [2, 2],
      [60, 2],
      [60, 44],
      [2, 44],
    ],
  };
  const stone = await send('/api/stones', { name: 'S-01', widthMm: 400, heightMm: 400 });
  const work = await send('/api/works', {
    title: 'Low Water',
    stoneId: stone.id,
    rectangle: { offsetMm: [0, 0], sizeMm: [400, 300] },
    photographs: [{ photograph: drawn, state: 'drawn', corners }],
  });
  const pulls = `/api/works/${work.id}/pulls`;
  const pull = await send(pulls, {
    number: 1,
    paper: { words: 'rag' },
    photographs: [{ photograph: print }],
  });
  const pullState = ({ photographs }: PullEntry) => photographs[0]!.measuring!.state;
  const pullPath = `${pulls}/${pull.id}`;
  while (pullState(await ask<PullEntry>(pullPath)) !== 'measuring') await sleep(10);
  const sides = { stone: { photograph: drawn }, proof: { photograph: print } };
  const compared = await send('/api/comparisons', { title: 'one', sizeMm: [300, 400], ...sides });
  const testStone = await send('/api/test-stones', {
    name: 'T-1',
    sizeMm: [200, 150],
    factors: [{ name: 'medium', givenTo: 'patch' }],
    grid,
    patches,
    drawn: { photograph: drawn },
    prints: [{ id: 'first', name: 'First proof', photograph: print }],
  });
  await ask(`/api/test-stones/${testStone.id}/readings`, { method: 'POST' });
  await killServer(server);
  const next = await serverUnderTest({ dataFolder });
  const states = async () => [
    pullState(await next.json<PullEntry>(pullPath)),
    (await next.json<ComparisonEntry>(`/api/comparisons/${compared.id}`)).state,
    (await next.json<TestStoneReading>(`/api/test-stones/${testStone.id}/reading`)).prints[0]!.state,
  ];
  await expect
    .poll(states, { timeout: 60_000 })
    .toEqual([expect.stringMatching(ended), 'measured', 'measured']);
}, 120_000);
