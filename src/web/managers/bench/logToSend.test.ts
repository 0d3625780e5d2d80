import { describe, expect, it } from 'vitest';
import type { RunEvent, RunEventInput } from '../../../records/run.ts';
import { LogToSend, type UnsentEvent } from './logToSend.ts';

const event = (clientId: string): UnsentEvent => ({
  clientId,
  kind: 'note',
  payload: {},
  at: '2026-03-04T09:00:00Z',
  actor: null,
  device: 'phone',
});

/** A browser's storage that may be full, or slow. */
function aShelf() {
  const lying: UnsentEvent[] = [];
  const shelf = {
    lying,
    full: false,
    slow: null as Promise<void> | null,
    async read() {
      return [...lying];
    },
    async add(event: UnsentEvent) {
      await shelf.slow;
      if (shelf.full) throw new Error('full');
      if (!lying.some(({ clientId }) => clientId === event.clientId)) lying.push(event);
    },
    async drop(id: string) {
      const place = lying.findIndex(({ clientId }) => clientId === id);
      if (place >= 0) lying.splice(place, 1);
    },
  };
  return shelf;
}

/** A server that may be out of reach, or whose answer gets lost. */
function aServer() {
  const kept: RunEvent[] = [];
  const server = {
    kept,
    reach: true,
    loseAnswers: 0,
    refuse: false,
    async send(input: RunEventInput): Promise<RunEvent> {
      await Promise.resolve();
      if (server.refuse) throw new Error('refused');
      if (!server.reach) throw new TypeError('no line');
      const before = kept.find(({ clientId }) => clientId === input.clientId);
      const answer = before ?? ({ ...input, sequence: kept.length + 1 } as RunEvent);
      if (!before) kept.push(answer);
      if (server.loseAnswers-- > 0) throw new TypeError('no line');
      return answer;
    },
  };
  return server;
}

function aSender(shelf = aShelf(), server = aServer()) {
  const told: RunEvent[] = [];
  const toSend = new LogToSend<UnsentEvent, RunEvent>({
    shelf,
    send: server.send,
    isRefusal: (thrown) => thrown instanceof Error && thrown.message === 'refused',
    now: () => new Date('2026-03-04T10:00:00Z'),
    onKept: (kept) => told.push(kept),
  });
  return { toSend, shelf, server, told };
}

const settled = () => new Promise((done) => setTimeout(done));
const ids = (events: readonly { readonly clientId: string }[]) => events.map(({ clientId }) => clientId);

describe('what a run has to send', () => {
  it('sends at once, saying when it sent', async () => {
    const { toSend, server, told } = aSender();
    toSend.add(event('a'));
    await settled();
    expect(server.kept[0]?.sentAt).toBe('2026-03-04T10:00:00.000Z');
    expect(ids(told)).toEqual(['a']);
    expect(toSend.current()).toEqual({ unsent: [], state: 'well', kept: 'yes', read: true });
  });

  it('keeps what the server can’t take yet over a reload, and sends it in order', async () => {
    const { toSend, shelf, server } = aSender();
    server.reach = false;
    for (const id of ['a', 'b', 'c']) toSend.add(event(id));
    await settled();
    expect(toSend.current().state).toBe('unreachable');
    const again = aSender(shelf, server).toSend;
    await settled();
    expect(ids(again.current().unsent)).toEqual(['a', 'b', 'c']);
    server.reach = true;
    await again.drain();
    expect(ids(server.kept)).toEqual(['a', 'b', 'c']);
    await settled();
    expect(again.current()).toEqual({ unsent: [], state: 'well', kept: 'yes', read: true });
    expect(shelf.lying).toEqual([]);
  });

  it('asks again under the same id where the answer got lost', async () => {
    const { toSend, server } = aSender();
    server.loseAnswers = 1;
    toSend.add(event('a'));
    await settled();
    expect(toSend.current().unsent).toHaveLength(1);
    await toSend.drain();
    expect(ids(server.kept)).toEqual(['a']);
  });

  it('sends one at a time, however often it is asked', async () => {
    const { toSend, server } = aSender();
    toSend.add(event('a'));
    toSend.add(event('b'));
    await Promise.all([toSend.drain(), toSend.drain()]);
    await settled();
    expect(ids(server.kept)).toEqual(['a', 'b']);
  });

  it('goes on in the page where storage is full, and says so', async () => {
    const { toSend, shelf, server } = aSender();
    server.reach = false;
    shelf.full = true;
    toSend.add(event('a'));
    toSend.add(event('b'));
    await settled();
    expect(toSend.current().kept).toBe('no');
    expect(shelf.lying).toEqual([]);
    expect(ids(toSend.current().unsent)).toEqual(['a', 'b']);
    server.reach = true;
    await toSend.drain();
    expect(ids(server.kept)).toEqual(['a', 'b']);
  });

  it('writes down, in order, what storage refused, once it has room', async () => {
    const { toSend, shelf, server } = aSender();
    server.reach = false;
    shelf.full = true;
    for (const id of ['a', 'b']) toSend.add(event(id));
    await settled();
    shelf.full = false;
    toSend.add(event('c'));
    await settled();
    expect(toSend.current().kept).toBe('yes');
    expect(ids(shelf.lying)).toEqual(['a', 'b', 'c']);
  });

  it('says that it keeps a tap only once the browser has written it down, and sends it all the same', async () => {
    const { toSend, shelf, server } = aSender();
    let written = () => {};
    shelf.slow = new Promise((resolve) => {
      written = resolve;
    });
    server.reach = false;
    toSend.add(event('a'));
    await settled();
    expect(toSend.current()).toMatchObject({ state: 'unreachable', kept: 'not yet' });
    server.reach = true;
    await toSend.drain();
    expect(ids(server.kept)).toEqual(['a']);
    written();
    await settled();
    expect(toSend.current()).toMatchObject({ unsent: [], kept: 'yes' });
    expect(shelf.lying, 'what was sent in the meantime lies there no more').toEqual([]);
  });

  it('does not send again what a second page of this browser sent', async () => {
    const { toSend, shelf, server } = aSender();
    server.reach = false;
    toSend.add(event('a'));
    await settled();
    server.reach = true;
    await aSender(shelf, server).toSend.drain();
    await settled();
    await toSend.drain();
    expect(toSend.current().unsent).toEqual([]);
    expect(ids(server.kept)).toEqual(['a']);
  });

  it('takes up what a second page of this browser added', async () => {
    const { toSend, shelf, server } = aSender();
    server.reach = false;
    toSend.add(event('a'));
    await settled();
    const second = aSender(shelf, server).toSend;
    second.add(event('b'));
    await settled();
    toSend.add(event('c'));
    await settled();
    await toSend.drain();
    expect(ids(toSend.current().unsent)).toEqual(['a', 'b', 'c']);
  });

  it('holds what is refused and says so', async () => {
    const { toSend, server } = aSender();
    server.refuse = true;
    toSend.add(event('a'));
    await settled();
    expect(toSend.current()).toMatchObject({ state: 'refused', unsent: [{ clientId: 'a' }] });
  });
});
