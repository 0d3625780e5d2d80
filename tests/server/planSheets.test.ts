import { expect, it } from 'vitest';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import { pdfText } from '../gallery/popplerTools.ts';
import { studioUnderTest } from './studioUnderTest.ts';

it('gives the map and the step sheet of a kept plan, for the paper asked for', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const { body: plan } = await studio.send<KeptPlan>('POST', `/api/works/${work.id}/plans`, {});
  const path = `/api/works/${work.id}/plans/${plan.id}`;
  const text = async (sheet: string) => {
    const answer = await studio.call(`${path}/${sheet}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    return pdfText(new Uint8Array(await answer.arrayBuffer()));
  };
  const steps = await text('steps.pdf');
  expect(steps).toContain('First etch, step sheet · Low Water, stone S-01');
  expect(steps.split('\f').filter((page) => page.trim() !== '').length).toBe(1);
  const map = await text('map.pdf?paper=a3');
  expect(map).toContain('Stone 400 × 500 mm');
  expect(map).toContain('Tile M1 of 4');
  for (const [query, status] of [
    ['map.pdf?paper=a5', 400],
    ['steps.pdf?paper=', 400],
  ] as const)
    expect((await studio.call(`${path}/${query}`)).status).toBe(status);
  const missing = await studio.send('GET', `/api/works/${work.id}/plans/none/map.pdf`);
  expect(missing).toMatchObject({ status: 404, body: { code: 'not-found' } });
});
