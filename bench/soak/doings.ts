import { connect } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import type { ComparisonEntry } from '../../src/records/comparisonEntry.ts';
import type { LettingInCode } from '../../src/records/device.ts';
import { type Caller, createCaller } from '../served/caller.ts';
import { listen } from '../served/listen.ts';
import type { TwelveMegapixels } from '../served/twelveMegapixels.ts';
import type { Doing, Room } from './room.ts';

/** Minutes of a working day. */
const day = 8 * 60;

/**
 * What is done in a room of three benches, each with how often, in minutes of the room's day; a soak tells sixty of them in one.
 * Whatever is answered otherwise than it should be is thrown.
 */
export function doingsOf(room: Room, pictures: TwelveMegapixels): readonly Doing[] {
  const { caller } = room;
  let shots = 0;
  const take = async (which: 'stone' | 'print') => {
    shots += 1;
    const answer = await caller.upload(`${which}-${shots}.jpg`, pictures[which](shots));
    if (answer.status !== 201) throw new Error(`${answer.status} upload: ${answer.bytes}`);
    room.photographs += 1;
    return answer.json<{ id: string }>().id;
  };
  const get = async (path: string) => {
    const answer = await caller.ask('GET', path);
    if (answer.status !== 200) throw new Error(`${answer.status} ${path}: ${answer.bytes}`);
  };
  return [
    ...[0, 1, 2].map(
      (bench): Doing => ({ name: `bench ${bench + 1} taps`, every: 1, act: () => room.tap(bench) }),
    ),
    { name: 'begin anew at a bench', every: day / 2, act: () => room.beginAnew() },
    { name: 'look at a run', every: 4, act: async () => get(`/api/runs/${room.benchOf().runId}`) },
    {
      name: 'read its events',
      every: 6,
      act: () => {
        const { runId, taps } = room.benchOf();
        return get(`/api/runs/${runId}/events?after=${Math.max(0, taps - 5)}`);
      },
    },
    { name: 'look at the rack', every: 10, act: () => get('/api/rack') },
    { name: 'list works', every: 15, act: () => get('/api/works?search=soak') },
    { name: 'look at the week', every: 60, act: () => get('/api/week') },
    { name: 'take a photograph', every: 60, act: async () => look(caller, await take('print')) },
    { name: 'compare a print', every: 120, act: () => compare(caller, pictures, take) },
    { name: 'pull and have it read', every: 240, act: () => pull(room, take) },
    { name: 'give up an upload', every: 120, act: () => giveUp(room.address, pictures.print(0)) },
    { name: 'a week, a door card, a protocol', every: 40, act: () => papers(room, get) },
    { name: 'an export', every: day, act: () => get('/api/export.zip') },
    { name: 'a backup, read back', every: day, act: () => backup(caller) },
    { name: 'a phone joins and leaves', every: 150, act: () => phone(room) },
    { name: 'a page that listens', every: 90, act: () => page(room.address) },
  ];
}

/** What a page shows of a new photograph. */
async function look(caller: Caller, id: string): Promise<void> {
  for (const path of ['preview.jpg', 'tiles/11/1/1.jpg', 'corners']) {
    const answer = await caller.ask('GET', `/api/photographs/${id}/${path}`);
    if (answer.status !== 200) throw new Error(`${answer.status} ${path}: ${answer.bytes}`);
  }
}

let compared = 0;

/** Every third one is given up half way. */
async function compare(
  caller: Caller,
  { sizeMm, zones, corners }: TwelveMegapixels,
  take: (which: 'stone' | 'print') => Promise<string>,
): Promise<void> {
  compared += 1;
  const giveUpThis = compared % 3 === 0;
  const stone = { photograph: await take('stone'), corners: corners.stone };
  const proof = { photograph: await take('print'), corners: corners.print };
  const request = { title: `soak ${compared}`, sizeMm, zones, stone, proof };
  const { id } = await caller.want<ComparisonEntry>('POST', '/api/comparisons', request);
  let wanted = giveUpThis ? 'stopped' : 'measured';
  for (let asked = false; ; await sleep(250)) {
    const { state, failure } = await caller.want<ComparisonEntry>('GET', `/api/comparisons/${id}`);
    if (state === wanted) break;
    if (state === 'measuring' && giveUpThis && !asked) {
      asked = true;
      const answer = await caller.ask('DELETE', `/api/comparisons/${id}/measuring`);
      // it may have been done just then
      if (answer.status >= 400) wanted = 'measured';
    } else if (state !== 'waiting' && state !== 'measuring' && !(asked && state === 'measured')) {
      throw new Error(`comparison ${id} is ${state}: ${failure?.message}`);
    } else if (state === 'measured') break;
  }
  if (wanted === 'measured') await caller.want('GET', `/api/comparisons/${id}/suspects`);
}

async function pull(room: Room, take: (which: 'stone' | 'print') => Promise<string>): Promise<void> {
  const { caller } = room;
  const path = `/api/works/${await room.pulledWork(() => take('stone'))}`;
  room.pulls += 1;
  const photographs = [{ photograph: await take('print'), ageMinutes: 5 }];
  const draft = { number: room.pulls, paper: { words: 'rag 250' }, photographs };
  type Entry = { id: string; photographs: { measuring: { state: string } | null }[] };
  const { id } = await caller.want<Entry>('POST', `${path}/pulls`, draft);
  for (;;) {
    const entry = await caller.want<Entry>('GET', `${path}/pulls/${id}`);
    const state = entry.photographs[0]!.measuring!.state;
    if (state === 'measured') break;
    if (state !== 'waiting' && state !== 'measuring') throw new Error(`pull ${room.pulls} is ${state}`);
    await sleep(250);
  }
  await caller.want('GET', `${path}/series`);
}

/** Sends half a photograph and goes away. */
async function giveUp(address: string, bytes: Uint8Array): Promise<void> {
  const { port, host } = new URL(address);
  const socket = connect(Number(port), '127.0.0.1');
  socket.on('error', () => {});
  socket.write(
    `POST /api/photographs HTTP/1.1\r\nhost: ${host}\r\ncontent-type: multipart/form-data; boundary=e\r\n` +
      `content-length: ${bytes.byteLength + 500}\r\n\r\n--e\r\n` +
      'content-disposition: form-data; name="photograph"; filename="half.jpg"\r\n\r\n',
  );
  socket.write(bytes.subarray(0, bytes.byteLength / 2));
  await sleep(500);
  socket.destroy();
}

async function papers(room: Room, get: (path: string) => Promise<void>): Promise<void> {
  const { workId, planId } = room.benchOf();
  const all = [
    '/api/week.pdf',
    '/api/room/door.pdf',
    `/api/works/${workId}/protocol.pdf`,
    `/api/works/${workId}/book.pdf`,
    `/api/works/${workId}/plans/${planId}/steps.pdf`,
    `/api/works/${workId}/plans/${planId}/map.pdf`,
  ];
  room.papers += 1;
  await get(all[room.papers % all.length]!);
}

type Copies = {
  busy: object | null;
  notMade: object | null;
  copies: { day: string; check: object | null }[];
};

async function backup(caller: Caller): Promise<void> {
  const idle = async () => {
    for (;;) {
      const state = await caller.want<Copies>('GET', '/api/copies');
      if (state.notMade) throw new Error(`the copy failed: ${JSON.stringify(state.notMade)}`);
      if (state.busy === null) return state;
      await sleep(500);
    }
  };
  await idle();
  await caller.want('POST', '/api/copies');
  const made = await idle();
  const [newest] = made.copies;
  if (!newest) throw new Error('no copy came to be');
  await caller.want('POST', `/api/copies/${newest.day}/check`);
  await idle();
}

async function phone(room: Room): Promise<void> {
  if (room.lan === null) return;
  const { code } = await room.caller.want<LettingInCode>('POST', '/api/letting-in');
  const stranger = createCaller(room.lan);
  const joined = await stranger.ask('POST', '/api/devices', { code });
  stranger.close();
  if (joined.status !== 201) throw new Error(`${joined.status} a phone: ${joined.bytes}`);
  const device = joined.json<{ device: { id: string } }>().device.id;
  const caller = createCaller(room.lan, joined.cookie);
  const stream = listen(room.lan, joined.cookie);
  for (let note = 0; note < 5; note++) {
    await room.note(caller, `from a phone ${note}`);
    await sleep(1000);
  }
  await room.caller.want('POST', `/api/devices/${device}/shut-out`);
  const after = await caller.ask('GET', '/api/rack').catch(() => null);
  if (after !== null && after.status !== 401)
    throw new Error(`${after.status} for a phone that was shut out`);
  caller.close();
  stream.close();
}

/** A page that is opened, hears of what happens, and is closed. */
async function page(address: string): Promise<void> {
  const stream = listen(address, null);
  await sleep(20_000);
  stream.close();
  if (stream.heard() === 0) throw new Error('a page heard of nothing in 20 s');
}
