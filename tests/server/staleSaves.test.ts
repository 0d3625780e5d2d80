import { describe, expect, it } from 'vitest';
import { saveRefusalSchema } from '../../src/contract/saveRefusal.ts';
import { stoneEntrySchema } from '../../src/contract/stone.ts';
import type { BatchEntry } from '../../src/records/batch.ts';
import type { EtchTableIssue } from '../../src/records/etchTableEntry.ts';
import type { KitEntry } from '../../src/records/kit.ts';
import type { MediumEntry } from '../../src/records/medium.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { type Refusal, rectangle, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

interface Saved {
  /** Where it is read. */
  readonly path: string;
  /** How two screens that both started from version 1 save it; the second must be refused. */
  readonly method: 'PATCH' | 'PUT';
  readonly saves: string;
  readonly body: (text: string) => object;
  readonly textOf: (kept: unknown) => unknown;
}

const moon = { id: 'moon', name: 'Moon', medium: 'stop-out', polygonMm: rectangle(10, 10, 40, 40) };

/** One of everything that can be saved, at version 1. */
async function everything(studio: StudioUnderTest): Promise<Readonly<Record<string, Saved>>> {
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const { body: batch } = await studio.send<BatchEntry>('POST', '/api/batches', { kind: 'gum', name: 'May' });
  const { body: cloth } = await studio.send<KitEntry>('POST', '/api/kit', { tool: 'cloth', name: 'Muslin' });
  const medium = { id: 'river-crayon', name: 'River', rule: { kind: 'none' } };
  await studio.send('POST', '/api/media', medium);
  const copy = { name: 'Ours', from: 'tannic' };
  const { body: table } = await studio.send<EtchTableIssue>('POST', '/api/etch-tables', copy);
  const rows = table.table.rows;
  const [stonePath, workPath] = [`/api/stones/${stone.id}`, `/api/works/${work.id}`];
  const [batchPath, tablePath] = [`/api/batches/${batch.id}`, `/api/etch-tables/${table.table.id}`];
  const noteOf = (kept: unknown) => (kept as { note: string }).note;
  return {
    stone: {
      path: stonePath,
      method: 'PATCH',
      saves: stonePath,
      body: (note) => ({ note }),
      textOf: noteOf,
    },
    work: { path: workPath, method: 'PATCH', saves: workPath, body: (note) => ({ note }), textOf: noteOf },
    zones: {
      path: workPath,
      method: 'PUT',
      saves: `${workPath}/zones.json`,
      body: (name) => ({ zones: [{ ...moon, name }] }),
      textOf: (kept) => (kept as WorkEntry).zones[0]!.name,
    },
    batch: {
      path: batchPath,
      method: 'PATCH',
      saves: batchPath,
      body: (note) => ({ kind: 'gum', note }),
      textOf: noteOf,
    },
    kit: {
      path: `/api/kit/${cloth.id}`,
      method: 'PATCH',
      saves: `/api/kit/${cloth.id}`,
      body: (note) => ({ tool: 'cloth', note }),
      textOf: noteOf,
    },
    table: {
      path: tablePath,
      method: 'PUT',
      saves: tablePath,
      body: (name) => ({ name, rows }),
      textOf: (kept) => (kept as EtchTableIssue).table.name,
    },
  };
}

describe('two screens that save one record', () => {
  it.each(['stone', 'work', 'zones', 'batch', 'kit', 'table'])(
    '%s: the second hears of the first',
    async (what) => {
      const studio = await studioUnderTest();
      const { path, method, saves, body, textOf } = (await everything(studio))[what]!;
      const save = (version: number, text: string) =>
        studio.send<Refusal>(method, saves, { version, ...body(text) });
      expect((await save(1, 'the printer wrote')).status).toBe(200);
      const kept = await studio.json(path);
      expect(textOf(kept)).toBe('the printer wrote');
      for (const version of [1, 7]) {
        const second = await save(version, 'the apprentice wrote');
        expect(second.status).toBe(409);
        expect(second.body).toMatchObject({ code: 'stale-save', path: 'version' });
        expect(second.body.message).toContain(`you started from version ${version}, it is now at 2`);
        expect(second.body.current).toEqual(kept);
        expect(await studio.json(path)).toEqual(kept);
      }
      expect((await save(2, 'the apprentice wrote')).status).toBe(200);
      expect(textOf(await studio.json(path))).toBe('the apprentice wrote');
    },
  );

  it('at the same moment: one of ten is kept', async () => {
    const studio = await studioUnderTest();
    for (const { method, saves, path, body, textOf } of Object.values(await everything(studio))) {
      const before = await studio.json<{ version?: number; table?: { version: number } }>(path);
      const version = before.version ?? before.table!.version;
      const texts = Array.from({ length: 10 }, (_, index) => `screen ${index}`);
      const answers = await Promise.all(
        texts.map((text) => studio.send(method, saves, { version, ...body(text) })),
      );
      const kept = answers.flatMap(({ status }, index) => (status === 200 ? [texts[index]] : []));
      expect(kept, saves).toHaveLength(1);
      expect(answers.filter(({ status }) => status === 409)).toHaveLength(9);
      expect(textOf(await studio.json(path))).toBe(kept[0]);
    }
  });

  it('a medium, which is read from its list', async () => {
    const studio = await studioUnderTest();
    await everything(studio);
    const save = (name: string) =>
      studio.send<Refusal<MediumEntry>>('PATCH', '/api/media/river-crayon', { version: 1, name });
    expect((await save('River crayon, soft')).status).toBe(200);
    const second = await save('River crayon, hard');
    expect([second.status, second.body.code]).toEqual([409, 'stale-save']);
    expect(second.body.current).toMatchObject({ name: 'River crayon, soft', version: 2 });
    const { media } = await studio.json<{ media: MediumEntry[] }>('/api/media');
    expect(media.at(-1)).toEqual(second.body.current);
  });

  it('putting by counts as a save', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    await studio.send('PATCH', `/api/stones/${stone.id}`, { version: 1, note: 'chipped' });
    const late = await studio.send<Refusal<StoneEntry>>('PUT', `/api/stones/${stone.id}/put-by`, {
      version: 1,
      putBy: true,
    });
    expect([late.status, late.body.code]).toEqual([409, 'stale-save']);
    saveRefusalSchema(stoneEntrySchema).parse(late.body);
    expect(late.body.current).toMatchObject({ putBy: false, note: 'chipped', version: 2 });
  });
});
