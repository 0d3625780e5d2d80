import { describe, expect, it } from 'vitest';
import type { LeavingList } from '../../records/rack.ts';
import type { ToSendView, UnsentEvent } from './bench/logToSend.ts';
import { LeavingDesk } from './leavingDesk.ts';
import { stepKey } from './stepKey.ts';

const list: LeavingList = {
  stones: [
    {
      workId: 'low',
      runId: 'run',
      stoneName: 'S-01',
      title: 'Low Water',
      steps: [
        { words: 'gum it', logs: { kind: 'gummed', payload: { words: 'before leaving' } } },
        { words: 'cover it', logs: null },
      ],
    },
    {
      workId: 'neap',
      runId: null,
      stoneName: 'S-02',
      title: 'Neap',
      steps: [{ words: 'gum it', logs: { kind: 'gummed', payload: { words: 'before leaving' } } }],
    },
  ],
  room: ['roller wrapped'],
};

function aShelf() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
}

/** A desk whose allToSend only hold what they are given. */
function aDesk(
  begin: () => Promise<string> = async () => 'begun',
  { shelf = aShelf(), now = '2026-03-04T17:00:00Z' } = {},
) {
  const logged = new Map<string, UnsentEvent[]>();
  let count = 0;
  const desk = new LeavingDesk(list, {
    toSendOf: (runId) => {
      const events: UnsentEvent[] = [];
      logged.set(runId, events);
      return {
        add: (event) => void events.push(event),
        current: (): ToSendView => ({ unsent: events, state: 'unreachable', kept: 'yes', read: true }),
        listen: () => () => {},
        drain: async () => {},
      };
    },
    begin,
    newClientId: () => `tap ${++count}`,
    device: 'phone',
    now: () => new Date(now),
    shelf,
  });
  const kinds = (runId: string) => logged.get(runId)?.map(({ kind }) => kind) ?? [];
  return { desk, logged, kinds };
}

describe('leaving', () => {
  it('ticks that no log holds outlive a reload, until one left or it was long ago', async () => {
    const shelf = aShelf();
    const first = aDesk(undefined, { shelf }).desk;
    for (const [work, index] of [
      ['low', 0],
      ['low', 1],
      [null, 0],
    ] as const)
      await first.toggle(work, index);
    const held = [stepKey('low', 1), stepKey(null, 0)];
    const again = aDesk(undefined, { shelf }).desk;
    expect([...again.current().ticked]).toEqual(held);
    const late = aDesk(undefined, { shelf, now: '2026-03-05T08:00:00Z' }).desk;
    expect(late.current().ticked.size).toBe(0);
    await again.leave();
    expect(aDesk(undefined, { shelf }).desk.current().ticked.size).toBe(0);
  });

  it('logs what a step does to the stone at its tick, and takes it back with the tick', async () => {
    const { desk, logged } = aDesk();
    await desk.toggle('low', 0);
    await desk.toggle('low', 1);
    await desk.toggle('low', 0);
    const [gum, undo, ...more] = logged.get('run')!;
    expect(more).toEqual([]);
    expect(gum).toMatchObject({ kind: 'gummed', at: '2026-03-04T17:00:00.000Z', device: 'phone' });
    expect(undo).toMatchObject({ kind: 'undo', payload: { clientId: gum!.clientId } });
    expect([...desk.current().ticked]).toEqual([stepKey('low', 1)]);
  });

  it('tells every run at last what was ticked, the room’s steps too, and shows what is unsent', async () => {
    const { desk, logged, kinds } = aDesk();
    await desk.toggle('low', 0);
    await desk.toggle(null, 0);
    await desk.leave();
    expect(kinds('run')).toEqual(['gummed', 'left']);
    expect(logged.get('run')![1]!.payload).toEqual({ done: ['gum it', 'roller wrapped'] });
    expect(logged.has('begun')).toBe(false);
    expect(desk.current()).toMatchObject({ left: true, sending: { state: 'unreachable' } });
    expect(desk.current().sending.unsent.length).toBe(2);
  });

  it('begins one run for a stone that has none, once something is done to it', async () => {
    let begun = 0;
    const { desk, kinds } = aDesk(async () => {
      begun++;
      return 'begun';
    });
    await Promise.all([desk.toggle('neap', 0), desk.toggle('neap', 0), desk.toggle('neap', 0)]);
    await desk.leave();
    expect(begun).toBe(1);
    expect(kinds('begun')).toEqual(['gummed', 'undo', 'gummed', 'left']);
  });

  it('takes back the tick where no run could be begun, and says why', async () => {
    const { desk } = aDesk(() => Promise.reject(new TypeError('no line')));
    await desk.toggle('neap', 0);
    expect(desk.current().ticked.size).toBe(0);
    expect(desk.current().trouble).toBeInstanceOf(TypeError);
    await desk.leave();
    expect(desk.current()).toMatchObject({ left: true, trouble: null });
  });
});
