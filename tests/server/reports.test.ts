import { unzipSync } from 'fflate';
import { expect, it } from 'vitest';
import type { Edition } from '../../src/records/edition.ts';
import type { KeptAt } from '../../src/records/keptAt.ts';
import type { LedgerEntry } from '../../src/records/ledger.ts';
import type { Material } from '../../src/records/material.ts';
import type { Report } from '../../src/records/report.ts';
import type { ReportFigure, SetReport } from '../../src/records/setReport.ts';
import { isoDayWords } from '../../src/science/calendar/dateWords.ts';
import { ledgerState } from '../../src/studio/editions/ledgerState.ts';
import { leavesOf, recordReader } from './followFigures.ts';
import { lowWaterPrinted } from './lowWaterPrinted.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';
import { expectWellFormed } from './wellFormed.ts';

async function aYear(studio: StudioUnderTest) {
  const made = async <T>(path: string, body: object, method = 'POST'): Promise<T> => {
    const answer = await studio.send<T>(method, path, body);
    if (answer.status >= 300) throw new Error(`${path}: ${JSON.stringify(answer.body)}`);
    return answer.body;
  };
  const { work, comparison, plan } = await lowWaterPrinted(studio);
  await made(`/api/works/${work.id}/approvals`, { pull: 3, artist: 'M.K.', printer: 'P.R.' });
  const edition = await made<Edition>(`/api/works/${work.id}/editions`, { title: 'Twelve Tides', size: 5 });
  for (const [index, verdict] of ['good', 'good', 'torn'].entries())
    await made(`/api/editions/${edition.id}/ledger`, {
      clientId: `i${index + 1}`,
      kind: 'impression',
      at: '2026-03-09T09:30:00+01:00',
      payload: { verdict },
    });
  await made(
    `/api/editions/${edition.id}/prints`,
    { version: 1, prints: [{ impression: 'i1', kind: 'edition', number: 1 }] },
    'PUT',
  );
  const nitric = await made<Material>('/api/materials', {
    name: 'Nitric acid, 68 %',
    hazards: ['corrosive', 'oxidising'],
    gramsPerMl: 1.41,
  });
  const tannic = await made<Material>('/api/materials', {
    name: 'Tannic solution',
    hazards: ['irritant'],
    gramsPerMl: 1.02,
  });
  const report = await made<Report>('/api/reports', {
    title: 'A year of Twelve Tides',
    reader: 'Saltreach Harbour Trust',
    from: '2026-01-01',
    works: [work.id],
    comparisons: [comparison.id],
    editions: [edition.id],
    replacements: [
      {
        before: 'Nitric acid',
        beforeMaterialId: nitric.id,
        beforeMl: 40,
        beforeFrom: 'the year before, by the bottle',
        now: 'tannic solution',
        nowMaterialId: tannic.id,
      },
    ],
    words: {
      aims: ['Twelve stones without acid.'],
      found: [
        'We made ',
        { figure: 'pulls' },
        ' pulls; ',
        { figure: 'zones held' },
        ' of ',
        { figure: 'zones' },
        ' zones held.\n\nOf ',
        { figure: 'moonbeams' },
        ' nothing is known.',
      ],
      materials: ['We laid ', { figure: 'tannic solution ml' }, '.'],
    },
  });
  return { work, plan, edition, report, comparison };
}

it('fills every figure from a record that it names, and says what it could not', async () => {
  const studio = await studioUnderTest();
  const { work, plan, edition, report } = await aYear(studio);
  const set = await studio.json<SetReport>(`/api/reports/${report.id}/report.json`);
  const read = recordReader(studio, () => work.id);
  const { entries } = await studio.json<{ entries: LedgerEntry[] }>(`/api/editions/${edition.id}/ledger`);
  const ledger = ledgerState(entries, new Date(0));
  const { prints } = await studio.json<Edition>(`/api/editions/${edition.id}`);
  const follow = async (at: KeptAt): Promise<unknown> => {
    if (at.record === 'prints') return prints.filter(({ kind }) => `kind:${kind}` === at.field).length;
    if (at.record !== 'ledger') return read(at);
    if (at.field === 'impressions') return ledger.impressions.length;
    if (at.field === 'first') return isoDayWords(ledger.impressions[0]!.at);
    if (at.field === 'last') return isoDayWords(ledger.impressions.at(-1)!.at);
    return ledger[at.field as 'good'];
  };
  const value = (name: string) => set.figures.find((figure) => figure.name === name)?.value;
  const workedOut = async ({ from, of, how }: ReportFigure): Promise<number> => {
    const kept: unknown[] = [];
    for (const at of from) kept.push(await follow(at));
    for (const [index, one] of kept.entries()) expect(one, JSON.stringify(from[index])).not.toBeUndefined();
    const tenth = (number: number) => Math.round(10 * number) / 10;
    switch (how) {
      case 'count':
        return kept.length;
      case 'as kept':
        return Number(kept[0]);
      case 'sum':
        return tenth(kept.reduce<number>((sum, one) => sum + Number(one), 0));
      case 'sum, millilitres by density':
        return tenth(
          kept.reduce<number>((sum, one, index) => {
            if (from[index]!.record === 'material') return sum;
            return sum + Number(one) * (from[index + 1]?.record === 'material' ? Number(kept[index + 1]) : 1);
          }, 0),
        );
      case 'first minus second':
        return tenth(value(of[0]!)! - value(of[1]!)!);
      default:
        return how satisfies never;
    }
  };
  for (const figure of set.figures) {
    if (figure.value === null) continue;
    expect(await workedOut(figure), figure.name).toBe(figure.value);
  }
  expect(value('pulls')).toBe(3);
  expect(value('zones held')).toBe(5);
  expect(value('good')).toBe(2);
  expect(value('prints numbered')).toBe(1);
  const tannic = plan.plan.batches.find(({ material }) => material === 'tannic solution')!.ml;
  expect(value('tannic solution ml')).toBe(Math.round(10 * tannic) / 10);
  expect(value('eats skin and eyes less g')).toBe(56.4);
  expect(value('gum ml')).toBe(plan.plan.batches.find(({ material }) => material === 'gum')!.ml + 10);
  expect(set.figures.find(({ name }) => name === 'gum ml')).toMatchObject({ plusMinus: 7.5 });
  expect(set.figures.find(({ name }) => name === 'tannic solution ml')!.note).toMatch(/^only planned/);
  expect(set.figures.find(({ name }) => name === 'tannic solution ml')!.plusMinus).toBeGreaterThan(0);
  expect(set.figures.find(({ name }) => name === 'talc ml')).toMatchObject({ value: null });

  // every line and every word that holds a figure says where it is from
  const lines = set.parts.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])),
  );
  expect(lines.find(({ label }) => label === 'Good to print')?.value).toBe('pull 3, signed by M.K. and P.R.');
  for (const { label, value: told, from, figure } of lines) {
    if (told === null || figure !== null) continue;
    let left = told;
    for (const one of from) {
      if (one.shown !== '') expect(String(await follow(one)), `${label}: ${one.field}`).toBe(one.shown);
      left = left.replace(one.shown, '');
    }
    expect(left, `${label} shows a figure that is kept nowhere`).not.toMatch(/\d/);
  }
  const runs = set.parts.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'words' ? block.paragraphs.flat() : [])),
  );
  expect(runs.map(({ text }) => text).join('')).toContain('We made 3 pulls; 5 of 5 zones held.');
  expect(set.unknownFigures).toEqual(['moonbeams']);
  const all = runs.map(({ text }) => text).join('');
  expect(all).toContain('Of (figure missing: moonbeams) nothing is known.');
  // counts stand in sentences, and what the writer's words tell is not told again
  expect(all).toContain('1 work on 1 stone.');
  expect(all.match(/3 pulls/g)).toHaveLength(1);
  expect(all).toContain('1 print was measured against the stone.');
  expect(set.gaps).toContain('washout time (Low Water, on S-01)');
  expect(set.gaps).toContain('how much tannic solution was poured (Low Water, on S-01)');
  expect(set.gaps.join()).not.toMatch(/how much gum was poured/);
  const [lack] = set.parts.flatMap(({ blocks }) => blocks.filter((block) => block.kind === 'gaps'));
  expect(lack!.groups[0]).toMatchObject({ record: 'work', id: work.id, name: 'Low Water, on S-01' });
  expect(lack!.groups[0]!.items).toContain('washout time');
  // each once, and nowhere else
  expect(new Set(set.gaps).size).toBe(set.gaps.length);
  expect(leavesOf(set.parts).filter(([, leaf]) => leaf === 'washout time')).toHaveLength(1);
  expect(lines.every(({ value: told }) => told !== null)).toBe(true);
});

it('is handed out as HTML, PDF and a word processor’s file that others can open', async () => {
  const studio = await studioUnderTest();
  const { report } = await aYear(studio);
  const bytes = async (form: string) => {
    const response = await studio.call(`/api/reports/${report.id}/report.${form}`);
    expect(response.status, form).toBe(200);
    return new Uint8Array(await response.arrayBuffer());
  };
  const text = new TextDecoder();
  const html = text.decode(await bytes('html'));
  expect(html).toContain('We made <a class="figure" data-figure="pulls" href="#figure-pulls">3</a> pulls');
  expect(html).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
  expectWellFormed(
    html
      .replace('<!doctype html>', '')
      .replace(/<meta[^>]*>/g, '')
      .replaceAll('<br>', ''),
  );
  expect(text.decode((await bytes('pdf')).slice(0, 5))).toBe('%PDF-');
  const parts = unzipSync(await bytes('docx'));
  expect(Object.keys(parts)).toContain('word/document.xml');
  for (const [name, part] of Object.entries(parts))
    if (/\.(xml|rels)$/.test(name)) expectWellFormed(text.decode(part));
  const words = text.decode(parts['word/document.xml']).replace(/<[^>]+>/g, '');
  expect(words).toContain('We made 3 pulls');
  expect(words).toContain('Low Water, on S-01');
  expect(words).toContain('washout time');
});

it('is saved by version, shelved, and refused where it names what is not there', async () => {
  const studio = await studioUnderTest();
  const made = await studio.send<Report>('POST', '/api/reports', { title: 'Empty' });
  expect(made).toMatchObject({ status: 201, body: { version: 1, words: { aims: [] } } });
  const path = `/api/reports/${made.body.id}`;
  const empty = await studio.json<SetReport>(`${path}/report.json`);
  expect(empty.figures.find(({ name }) => name === 'impressions')).toBeUndefined();
  expect(empty.gaps).toEqual([]);
  expect(empty.parts).toEqual([]);
  const saved = await studio.send<Report>('PATCH', path, {
    version: 1,
    words: { ...made.body.words, aims: ['Less acid.'] },
  });
  expect(saved.body).toMatchObject({ version: 2, words: { aims: ['Less acid.'] } });
  const late = await studio.send<Refusal<Report>>('PATCH', path, { version: 1, title: 'Late' });
  expect(late).toMatchObject({ status: 409, body: { code: 'stale-save', current: { title: 'Empty' } } });
  const unknown = await studio.send<Refusal>('PATCH', path, { version: 2, works: ['none'] });
  expect(unknown).toMatchObject({ status: 422, body: { code: 'reference-unknown', path: 'works[0]' } });
  const shelved = await studio.send<Report>('PUT', `${path}/put-by`, { version: 2, putBy: true });
  expect(shelved.body.putBy).toBe(true);
  expect(await studio.json('/api/reports')).toEqual({ reports: [], next: null });
  expect((await studio.call('/api/reports/none/report.pdf')).status).toBe(404);
});
