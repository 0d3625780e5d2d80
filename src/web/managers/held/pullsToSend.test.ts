import { describe, expect, it } from 'vitest';
import type { PullDraft } from '../../../records/pull.ts';
import { nextPull } from '../proofs/pullDraft.ts';
import { heldName } from './heldName.ts';
import type { HeldPhotograph } from './heldPhotograph.ts';
import type { HeldPull } from './heldPull.ts';
import { PullsToSend } from './pullsToSend.ts';

const now = '2026-03-04T10:00:00.000Z';

function entered(id: string, number: number, photographs: readonly string[] = []): HeldPull {
  return {
    workId: 'low',
    workTitle: 'Low Water',
    enteredAt: now,
    typed: {
      ...nextPull([]),
      id,
      number,
      paper: { id: null, words: 'rag 250' },
      way: 'camera',
      photographs: photographs.map((photograph) => ({ photograph, takenAt: now, corners: null })),
    },
  };
}

function taken(id: string, pull: string, kept: string | null): HeldPhotograph {
  const belongs = { to: 'pull-draft', workId: 'low', pull } as const;
  return { id, blob: new Blob([id]), fileName: 'a.jpg', shows: 'a pull', takenAt: now, belongs, kept };
}

/** A browser's disk, and a server that keeps a pull once under its id. */
function aRoom() {
  const room = {
    pulls: [] as HeldPull[],
    photographs: [] as HeldPhotograph[],
    kept: new Map<string, PullDraft>(),
    asked: 0,
    again: [] as string[],
    reach: true,
    loseAnswer: false,
    refuse: new Map<string, string>(),
    /** What a read waits for, once it has seen what lies there. */
    readAfter: Promise.resolve(),
  };
  const page = () =>
    new PullsToSend({
      shelf: {
        read: async () => {
          const seen = [...room.pulls];
          await room.readAfter;
          return seen;
        },
        put: async (pull) => {
          const at = room.pulls.findIndex(({ typed }) => typed.id === pull.typed.id);
          if (at >= 0) room.pulls[at] = pull;
          else room.pulls.push(pull);
        },
        drop: async (id, photographs) => {
          room.pulls = room.pulls.filter(({ typed }) => typed.id !== id);
          room.photographs = room.photographs.filter((one) => !photographs.includes(one.id));
        },
      },
      photographs: async () => room.photographs,
      sendAgain: async (id) => {
        room.again.push(id);
      },
      async send({ typed }, draft) {
        room.asked += 1;
        if (!room.reach) throw new TypeError('no line');
        const code = room.refuse.get(typed.id);
        if (code) throw new Error(code);
        if (!room.kept.has(typed.id)) room.kept.set(typed.id, draft);
        if (room.loseAnswer) {
          room.loseAnswer = false;
          throw new TypeError('the answer got lost');
        }
      },
      refusalOf: (thrown) =>
        thrown instanceof TypeError
          ? null
          : { code: (thrown as Error).message, message: '', remedy: '', forAll: false },
      onGone: () => {},
      onGoneElsewhere: () => {},
    });
  return Object.assign(room, { page });
}

describe('pulls that wait', () => {
  it('are sent in order once their photographs are, and then held no more with them', async () => {
    const room = aRoom();
    const toSend = room.page();
    room.photographs = [taken('a', 'one', null)];
    await toSend.hold(entered('one', 4, [heldName('a'), heldName('thrown away')]));
    await toSend.hold(entered('two', 5));
    await toSend.drain();
    expect([...room.kept.keys()], 'the first waits for its photograph').toEqual(['two']);
    room.photographs = [taken('a', 'one', 'kept a')];
    await toSend.drain();
    expect(room.kept.get('one')!.photographs).toMatchObject([{ photograph: 'kept a', takenAt: now }]);
    expect([toSend.current().waiting, room.pulls, room.photographs]).toEqual([[], [], []]);
  });

  it('are kept once where the answer got lost, by a later page too', async () => {
    const room = aRoom();
    room.reach = false;
    const first = room.page();
    await first.hold(entered('one', 4));
    await first.drain();
    expect(first.current()).toMatchObject({ unreachable: true, waiting: [{ refusal: null }] });
    room.reach = true;
    room.loseAnswer = true;
    await room.page().drain();
    expect([room.kept.size, room.pulls.length]).toEqual([1, 1]);
    const last = room.page();
    await last.drain();
    expect([room.kept.size, room.pulls.length, last.current().waiting?.length]).toEqual([1, 0, 0]);
    await first.drain();
    expect(first.current().waiting, 'another page brought it').toEqual([]);
  });

  it('that are refused step aside and stay until they are changed', async () => {
    const room = aRoom();
    const toSend = room.page();
    room.refuse.set('one', 'pull-number-taken');
    await toSend.hold(entered('one', 4));
    await toSend.hold(entered('two', 5));
    await toSend.drain();
    await toSend.drain();
    expect([...room.kept.keys()]).toEqual(['two']);
    expect(room.asked, 'what is refused is not asked over and over').toBe(2);
    expect(toSend.current().waiting).toMatchObject([{ refusal: { code: 'pull-number-taken' } }]);
    room.refuse.clear();
    await toSend.hold(entered('one', 6));
    await toSend.drain();
    expect(room.kept.get('one')!.number).toBe(6);
  });

  it('have a photograph sent anew that the server no longer has', async () => {
    const room = aRoom();
    const toSend = room.page();
    room.photographs = [taken('a', 'one', 'kept a')];
    room.refuse.set('one', 'photograph-unknown');
    await toSend.hold(entered('one', 4, [heldName('a')]));
    await toSend.drain();
    expect(room.again).toEqual(['a']);
    expect(toSend.current().waiting).toMatchObject([{ refusal: null }]);
  });

  it('does not bring back what was thrown away while it looked', async () => {
    const room = aRoom();
    const page = room.page();
    await page.hold(entered('a', 1));
    let seen = () => {};
    room.readAfter = new Promise((done) => {
      seen = done;
    });
    const looked = page.takeUp();
    await page.drop('a', { withPhotographs: true });
    seen();
    await looked;
    expect(page.current().waiting).toEqual([]);
  });
});
