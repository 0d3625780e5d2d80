import { expect, it } from 'vitest';
import { workProtocolSchema } from '../../src/contract/workProtocol.ts';
import type { ForeignProtocol, WorkProtocol } from '../../src/records/workProtocol.ts';
import { expectFiguresKept, recordReader, valueAt } from './followFigures.ts';
import { lowWaterPrinted } from './lowWaterPrinted.ts';
import { studioUnderTest } from './studioUnderTest.ts';

it('says what was planned and done, follows every figure to its record, and names what was not recorded', async () => {
  const studio = await studioUnderTest();
  const { work } = await lowWaterPrinted(studio);
  const protocol = await studio.json<WorkProtocol>(`/api/works/${work.id}/protocol.json`);
  workProtocolSchema.parse(protocol);
  const follow = recordReader(studio, () => work.id);
  const { sources, ...paper } = protocol;
  expect(await expectFiguresKept(paper, sources, follow)).toBeGreaterThan(60);
  for (const { at } of sources) expect(valueAt(paper, at), `${at} is in the paper`).not.toBeUndefined();

  const mud = protocol.etches.find(({ name }) => /mudbank/i.test(name))!;
  expect(mud.done[0]!.spent).toMatchObject({ seconds: 160, how: 'measured' });
  expect(mud.parts[0]!.mlPer100Cm2).toBeGreaterThan(4);
  expect(protocol.etches.find(({ name }) => /sky/i.test(name))!.done).toEqual([]);
  const tannic = protocol.materials.find(({ name }) => name === 'tannic solution')!;
  expect(tannic).toMatchObject({ gramsPerLitre: 60, pH: null, gum: false });
  const rollUp = protocol.stages.find(({ stage }) => stage === 'roll-up')!;
  expect(rollUp.spent?.how).toBe('remembered');
  expect(protocol.deviations.join(' ')).toMatch(/dried at the edge/);
  expect(protocol.comparisons[0]!.counts).toEqual([{ change: 'held', zones: 5 }]);
  expect(protocol.series?.pulls).toBe(3);
  expect(protocol.notRecorded).toContain('washout time on S-01');
  expect(protocol.notRecorded).toContain('pH of the tannic solution on S-01');
  expect(protocol.notRecorded.join('; ')).toMatch(/how long the first etch lay on .*Sky/);
  expect(protocol.notRecorded.join('; ')).not.toMatch(/roll up time|Mudbank/);
  const sheet = await studio.call(`/api/works/${work.id}/protocol.pdf`);
  expect(new TextDecoder().decode((await sheet.arrayBuffer()).slice(0, 5))).toBe('%PDF-');
});

it('a work of which nothing is known gives a protocol of gaps, not of noughts', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-03');
  const work = await studio.work(stone.id, 'Slack Water', {
    origin: {
      kind: 'halfway',
      stage: 'washed-out',
      gummed: 'yes',
      history: [{ fact: 'grain', value: '220' }],
    },
  });
  const protocol = await studio.json<WorkProtocol>(`/api/works/${work.id}/protocol.json`);
  expect(protocol).toMatchObject({
    table: null,
    filmMm: null,
    materials: [],
    series: null,
    origin: 'halfway',
  });
  expect(protocol.notRecorded).toContain('its base on S-03');
  expect(protocol.notRecorded.join()).not.toMatch(/grained/);
  expect((await studio.send('GET', '/api/works/none/protocol.json')).status).toBe(404);
});

it('another studio keeps it, reads it and shelves it; what is not one, or newer, is refused in words', async () => {
  const studio = await studioUnderTest();
  const { work } = await lowWaterPrinted(studio);
  const sent = await studio.json<WorkProtocol>(`/api/works/${work.id}/protocol.json`);
  const other = await studioUnderTest();
  const kept = await other.send<ForeignProtocol>('POST', '/api/protocols', sent);
  expect(kept.status).toBe(201);
  expect(kept.body.protocol).toEqual(sent);
  const path = `/api/protocols/${kept.body.id}`;
  expect(await other.json(path)).toEqual(kept.body);
  const sheet = await other.call(`${path}/protocol.pdf`);
  expect(sheet.headers.get('content-type')).toBe('application/pdf');
  const shelved = await other.send<ForeignProtocol>('PUT', `${path}/put-by`, {
    version: 1,
    putBy: true,
  });
  expect(shelved.body).toMatchObject({ version: 2, putBy: true });
  expect(await other.json('/api/protocols')).toEqual({ protocols: [], next: null });
  const late = await other.send('PUT', `${path}/put-by`, { version: 1, putBy: false });
  expect(late).toMatchObject({ status: 409, body: { code: 'stale-save' } });

  const refuse = async (body: unknown) =>
    (await other.send<{ message: string }>('POST', '/api/protocols', body)).body;
  expect(await refuse({ ...sent, schema: 'stonetone/protocol/2' })).toMatchObject({ code: 'protocol-newer' });
  expect(await refuse([])).toMatchObject({
    code: 'protocol-malformed',
    message: 'This is no protocol that can be read here: it names no schema.',
  });
  expect(await refuse({ ...sent, filmMm: 'thin' })).toMatchObject({
    code: 'protocol-malformed',
    message: expect.stringContaining('it is not a number at filmMm'),
    path: 'filmMm',
  });
});
