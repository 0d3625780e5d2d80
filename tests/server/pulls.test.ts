import { describe, expect, it } from 'vitest';
import type { PullDifferences } from '../../src/records/pull.ts';
import type { PullEntry } from '../../src/records/pullTones.ts';
import type { Approval, KeptSeriesSettings, RoomNoise, WorkSeries } from '../../src/records/workSeries.ts';
import { type Refusal, studioUnderTest } from './studioUnderTest.ts';

const rag = { words: 'rag 250' };

async function deskUnderTest() {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const path = `/api/works/${work.id}`;
  async function pull(number: number, more: object = {}): Promise<PullEntry> {
    const made = await studio.send<PullEntry>('POST', `${path}/pulls`, { number, paper: rag, ...more });
    if (made.status !== 201) throw new Error(JSON.stringify(made.body));
    return made.body;
  }
  const series = async () => (await studio.send<WorkSeries>('GET', `${path}/series`)).body;
  return { ...studio, path, pull, series, stoneId: stone.id };
}

function byEye(middles: number): object {
  return { eye: { middles, who: 'P.R.' } };
}

describe('pulls of a work', () => {
  it('are kept with what is known and what is not, changed by version, and put by', async () => {
    const desk = await deskUnderTest();
    const one = await desk.pull(1, { kind: 'trial-proof', pressureEighths: 5, charges: 6 });
    expect(one).toMatchObject({ number: 1, kind: 'trial-proof', damp: null, passes: null, version: 1 });
    const at = `${desk.path}/pulls/${one.id}`;
    const saved = await desk.send<PullEntry>('PATCH', at, { version: 1, passes: 4 });
    expect(saved.body).toMatchObject({ version: 2, passes: 4, pressureEighths: 5 });
    const late = await desk.send<Refusal<PullEntry>>('PATCH', at, { version: 1, passes: 9 });
    expect([late.status, late.body.code, late.body.current?.passes]).toEqual([409, 'stale-save', 4]);
    await desk.send('PUT', `${at}/put-by`, { version: 2, putBy: true });
    expect((await desk.send<{ pulls: unknown[] }>('GET', `${desk.path}/pulls`)).body.pulls).toEqual([]);
    const again = await desk.pull(1);
    const back = await desk.send<Refusal>('PUT', `${at}/put-by`, { version: 3, putBy: false });
    expect([back.status, back.body.code]).toEqual([409, 'pull-number-taken']);
    expect(again.id).not.toBe(one.id);
  });

  it('are kept once under the id that a device made, though sent again, changed or put by meanwhile', async () => {
    const desk = await deskUnderTest();
    const id = 'a1b2c3d4e5f6a1b2c3d4e5f6';
    const one = await desk.pull(1, { id, passes: 3 });
    expect(one.id).toBe(id);
    const at = `${desk.path}/pulls/${id}`;
    await desk.send('PATCH', at, { version: 1, passes: 4 });
    expect(await desk.pull(1, { id, passes: 3 })).toMatchObject({ id, version: 2, passes: 4 });
    await desk.send('PUT', `${at}/put-by`, { version: 2, putBy: true });
    expect(await desk.pull(1, { id })).toMatchObject({ id, putBy: true });
    expect((await desk.send<{ pulls: unknown[] }>('GET', `${desk.path}/pulls`)).body.pulls).toEqual([]);
    const other = await desk.work(desk.stoneId, 'High Water');
    const strange = { id, number: 9, paper: rag };
    const there = await desk.send<Refusal>('POST', `/api/works/${other.id}/pulls`, strange);
    expect([there.status, there.body.code]).toEqual([422, 'pull-of-other-work']);
    const odd = await desk.send<Refusal>('POST', `${desk.path}/pulls`, { ...strange, id: '../x' });
    expect([odd.status, odd.body.path]).toEqual([400, 'id']);
  });

  it('say clearly that a number is taken and that a pull is of another work', async () => {
    const desk = await deskUnderTest();
    const one = await desk.pull(3);
    const twice = await desk.send<Refusal>('POST', `${desk.path}/pulls`, { number: 3, paper: rag });
    expect(twice.body).toMatchObject({
      code: 'pull-number-taken',
      message: 'There is a pull 3 of this work already.',
      path: 'number',
    });
    expect(twice.body.remedy).toContain('which is 4');
    const other = await desk.work(desk.stoneId, 'High Water');
    const strange = await desk.send<Refusal>('GET', `/api/works/${other.id}/pulls/${one.id}`);
    expect(strange.body).toMatchObject({
      code: 'pull-of-other-work',
      message: 'This is pull 3 of the work Low Water, not one of High Water.',
    });
  });

  it('tell what else changed since the pull before, and what is not known', async () => {
    const desk = await deskUnderTest();
    await desk.pull(1, { ink: { words: 'Black, soft' }, charges: 6 });
    const two = await desk.pull(2, { ink: { words: 'Black, stiff' }, charges: 6 });
    const { body } = await desk.send<PullDifferences>('GET', `${desk.path}/pulls/${two.id}/since`);
    expect(body.since).toBe(1);
    const verdict = (what: string) => body.differences.find((one) => one.what === what)?.verdict;
    expect(body.differences[0]).toMatchObject({ what: 'ink', later: 'Black, stiff', verdict: 'changed' });
    expect(verdict('charges')).toBe('unchanged');
    expect(verdict('roller')).toBe('unknown');
    expect(verdict('correction of the stone')).toBe('unknown');
  });
});

describe('the series of a work', () => {
  it('told by eye is never called steady', async () => {
    const desk = await deskUnderTest();
    for (const [index, middles] of [0.2, 0.27, 0.34, 0.34].entries())
      await desk.pull(index + 1, byEye(middles));
    const { answer, sigma, pulls } = await desk.series();
    expect(sigma).toBe(0.1);
    expect(answer.steady).toBe('unknown');
    expect(answer.warnings.join(' ')).toContain('by eye');
    expect(pulls.map(({ how }) => how)).toEqual(['eye', 'eye', 'eye', 'eye']);
  });

  it('never pools papers, nor damp with dry', async () => {
    const desk = await deskUnderTest();
    await desk.pull(1, { ...byEye(0.2), paper: { words: 'newsprint' } });
    await desk.pull(2, { ...byEye(0.2), damp: false });
    await desk.pull(3, { ...byEye(0.2), damp: true });
    const { answer } = await desk.series();
    expect(answer.compared).toEqual([3]);
    expect(answer.warnings.join(' ')).toContain('Mixed papers: pulls 1 and 2');
  });

  it('asks for one sheet to be read twice while σ of the room is not known; what is typed counts until then', async () => {
    const desk = await deskUnderTest();
    const { body: unknown } = await desk.send<RoomNoise>('GET', '/api/noise');
    expect(unknown).toMatchObject({ sigma: null, origin: 'unknown', version: 0 });
    expect(unknown.ask).toContain('twice');
    const { body: typed } = await desk.send<RoomNoise>('PUT', '/api/noise', { version: 0, typed: 0.01 });
    expect(typed).toMatchObject({ origin: 'typed', version: 1, sigma: { value: 0.01, basis: 'typed' } });
    const stale = await desk.send<Refusal>('PUT', '/api/noise', { version: 0, typed: 0.02 });
    expect(stale.status).toBe(409);
  });

  it('takes its areas from the zones until the artist chooses, and its tolerance from the artist', async () => {
    const desk = await deskUnderTest();
    const at = `${desk.path}/series/measure`;
    const { body: first } = await desk.send<KeptSeriesSettings>('GET', at);
    expect(first).toMatchObject({ version: 0, tolerance: 0.04, reference: null, best: null });
    expect(first.areas.darks.zones).toEqual(['post']);
    expect(first.areas.lights.zones).toEqual(['sky']);
    const { body: saved } = await desk.send<KeptSeriesSettings>('PATCH', at, { version: 0, tolerance: 0.03 });
    expect(saved).toMatchObject({ version: 1, tolerance: 0.03 });
    expect((await desk.series()).tolerance).toBe(0.03);
    const best = await desk.send<Refusal>('PATCH', at, { version: 1, best: 9 });
    expect(best.body).toMatchObject({ code: 'reference-unknown', path: 'best' });
    const polygonsMm = [
      [
        [0, 0],
        [900, 0],
        [0, 50],
      ],
    ];
    const areas = { lights: { polygonsMm }, middles: first.areas.middles, darks: first.areas.darks };
    const off = await desk.send<Refusal>('PATCH', at, { version: 1, areas });
    expect(off.body).toMatchObject({
      code: 'zone-off-stone',
      path: 'areas.lights.polygonsMm[0].polygonMm[1]',
    });
  });
});

describe('good to print', () => {
  it('needs three pulls within the tolerance, no standing fault and two signatures; withdrawn, it says what rests on it', async () => {
    const desk = await deskUnderTest();
    const eye = { eye: { lights: 0.1, middles: 0.5, darks: 0.9, who: 'P.R.' } };
    await desk.pull(1, eye);
    await desk.pull(2, eye);
    const three = await desk.pull(3, { ...eye, faults: [{ words: 'slur at the post' }] });
    const at = `${desk.path}/approvals`;
    const marks = { pull: 3, artist: 'A.T.' };
    const { body: lacking } = await desk.send<Refusal>('POST', at, marks);
    expect(lacking.message).toContain("The printer's signature is missing.");
    expect(lacking.message).toContain('Pull 3 has a fault that stands: slur at the post.');
    const closed = {
      words: 'slur at the post',
      closed: { at: '2026-03-01T10:00:00Z', words: 'less pressure' },
    };
    await desk.send('PATCH', `${desk.path}/pulls/${three.id}`, { version: 1, faults: [closed] });
    const given = await desk.send<Approval>('POST', at, { ...marks, printer: 'P.R.' });
    expect([given.status, given.body.restsOn, given.body.tones.middles]).toEqual([201, [1, 2, 3], 0.5]);
    await desk.pull(4, { kind: 'edition' });
    const unread = await desk.send<Refusal>('POST', at, { pull: 4, artist: 'A.T.', printer: 'P.R.' });
    expect([unread.body.code, unread.body.message]).toEqual([
      'not-good-to-print',
      expect.stringContaining('Pull 4 was not read.'),
    ]);
    const taken = await desk.send<Approval>('POST', `${at}/${given.body.id}/no-longer-good`, {
      who: 'A.T.',
      why: 'the moon closes',
    });
    expect(taken.body.restsOnIt[0]).toBe('Pull 4 of the edition was printed to this standard.');
    const { body: history } = await desk.send<{ approvals: Approval[] }>('GET', at);
    expect(history.approvals).toMatchObject([{ pull: 3, withdrawn: { who: 'A.T.' } }]);
    const twice = await desk.send<Refusal>('POST', `${at}/${given.body.id}/no-longer-good`, {
      who: 'A',
      why: 'b',
    });
    expect(twice.body.code).toBe('no-longer-good');
  });
});
