import { describe, expect, it } from 'vitest';
import type { HeldPhotograph, PhotographBelongs } from './heldPhotograph.ts';
import { PhotographsToSend } from './photographsToSend.ts';

const ofWork: PhotographBelongs = { to: 'work', workId: 'low', state: 'drawn' };

const taken = (id: string, belongs: PhotographBelongs = ofWork): HeldPhotograph => ({
  id,
  blob: new Blob([id]),
  fileName: `${id}.jpg`,
  shows: 'S-01',
  takenAt: '2026-03-04T09:00:00Z',
  belongs,
  kept: null,
});

function aShelf() {
  const lying: HeldPhotograph[] = [];
  const shelf = {
    lying,
    full: false,
    async read() {
      return [...lying];
    },
    async put(photograph: HeldPhotograph) {
      if (shelf.full) throw new Error('full');
      const place = lying.findIndex(({ id }) => id === photograph.id);
      if (place >= 0) lying[place] = photograph;
      else lying.push(photograph);
    },
    async drop(id: string) {
      const place = lying.findIndex((one) => one.id === id);
      if (place >= 0) lying.splice(place, 1);
    },
  };
  return shelf;
}

/** A server that names photographs by what they hold, and may be out of reach or refuse one. */
function aServer() {
  const server = {
    reach: true,
    refuse: new Set<string>(),
    full: false,
    sent: [] as string[],
    entered: [] as string[],
    loseAnswer: false,
    async send({ id }: HeldPhotograph) {
      await Promise.resolve();
      if (!server.reach) throw new TypeError('no line');
      if (server.full) throw new Error('too many');
      if (server.refuse.has(id)) throw new Error('no picture');
      server.sent.push(id);
      return `kept ${id}`;
    },
    async enter({ id, belongs }: HeldPhotograph, kept: string) {
      if (!server.reach) throw new TypeError('no line');
      if (belongs.to === 'pull-draft') return false;
      if (!server.entered.includes(kept)) server.entered.push(kept);
      if (server.loseAnswer) {
        server.loseAnswer = false;
        throw new TypeError(`the answer about ${id} got lost`);
      }
      return true;
    },
  };
  return server;
}

function aSender(shelf = aShelf(), server = aServer()) {
  const toSend = new PhotographsToSend({
    shelf,
    send: server.send,
    enter: server.enter,
    refusalOf: (thrown) =>
      thrown instanceof TypeError
        ? null
        : {
            message: (thrown as Error).message,
            remedy: '',
            forAll: (thrown as Error).message === 'too many',
          },
  });
  return { toSend, shelf, server };
}

const settled = () => new Promise((done) => setTimeout(done));

describe('photographs that wait', () => {
  it('are sent and entered in order, and then held no more', async () => {
    const { toSend, shelf, server } = aSender();
    server.reach = false;
    for (const id of ['a', 'b', 'c']) await toSend.add(taken(id));
    await settled();
    expect(toSend.current()).toMatchObject({ unreachable: true, waiting: [{ kept: true }, {}, {}] });
    server.reach = true;
    await toSend.drain();
    expect(server.entered).toEqual(['kept a', 'kept b', 'kept c']);
    expect([toSend.current().waiting, shelf.lying]).toEqual([[], []]);
    expect(toSend.current().unreachable).toBe(false);
  });

  it('are taken up by a later page, and entered once where the answer got lost', async () => {
    const { toSend, shelf, server } = aSender();
    server.loseAnswer = true;
    await toSend.add(taken('a'));
    await settled();
    expect(shelf.lying).toHaveLength(1);
    await aSender(shelf, server).toSend.drain();
    expect(server.entered).toEqual(['kept a']);
    expect(shelf.lying).toEqual([]);
    await toSend.drain();
    expect(toSend.current().waiting, 'another page brought it').toEqual([]);
  });

  it('that are no good step aside until a person lets go of them; a full day holds up all', async () => {
    const { toSend, server } = aSender();
    server.refuse.add('a');
    await toSend.add(taken('a'));
    await toSend.add(taken('b'));
    await settled();
    expect(server.entered).toEqual(['kept b']);
    expect(toSend.current().waiting).toMatchObject([{ refusal: { message: 'no picture' } }]);
    await toSend.drop('a');
    expect(toSend.current().waiting).toEqual([]);
    server.full = true;
    await toSend.add(taken('c'));
    await toSend.add(taken('d'));
    await settled();
    expect(toSend.current().waiting.map(({ refusal }) => refusal?.message ?? null)).toEqual([
      'too many',
      null,
    ]);
  });

  it('say so where the browser keeps nothing, and are sent from the page', async () => {
    const { toSend, shelf, server } = aSender();
    shelf.full = true;
    server.reach = false;
    await toSend.add(taken('a'));
    await settled();
    expect(toSend.current().waiting).toMatchObject([{ kept: false }]);
    shelf.full = false;
    await toSend.drain();
    expect(toSend.current().waiting, 'there is room again').toMatchObject([{ kept: true }]);
    shelf.full = true;
    server.reach = true;
    await toSend.drain();
    expect(server.entered).toEqual(['kept a']);
  });

  it('for something that is not saved yet wait, sent, for the screen that takes them up', async () => {
    const { toSend, shelf, server } = aSender();
    await toSend.add(taken('a', { to: 'pull-draft', workId: 'low', pull: 'p1' }));
    await settled();
    await toSend.drain();
    expect(server.sent).toEqual(['a']);
    expect(shelf.lying).toMatchObject([{ id: 'a', kept: 'kept a' }]);
    await toSend.drop('a');
    expect(shelf.lying).toEqual([]);
  });
});
