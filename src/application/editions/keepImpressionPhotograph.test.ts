import { expect, test } from 'vitest';
import type { Edition } from '../../records/edition.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { Pull } from '../../records/pull.ts';
import { keepImpressionPhotograph } from './keepImpressionPhotograph.ts';

const at = '2026-03-04T09:30:00.000Z';
const edition = {
  id: 'twelve-tides',
  workId: 'low-water',
  paper: { name: '', damped: 'unknown' },
  ink: '',
} as unknown as Edition;
const printed = ['a', 'b'].map((id, index) => ({
  clientId: id,
  sequence: index + 1,
  kind: 'impression',
  at,
  receivedAt: at,
  actor: 'P.R.',
  payload: { verdict: 'good' },
})) as unknown as readonly LedgerEntry[];

/** What is kept of one impression after its photographs came in. */
async function keptOf(impression: string, ages: readonly (number | null)[]) {
  const kept: Pull[] = [];
  const attached: (readonly string[])[] = [];
  const records = {
    pulls: {
      ofImpression: async () => kept.at(-1) ?? null,
      add: async (pull: Pull) => kept.push(pull),
      save: async (pull: Pull) => kept.push(pull),
    },
    pullMeasurings: { attach: async (_: string, all: readonly string[]) => attached.push(all) },
    ledgers: { entries: async () => printed },
  } as unknown as Parameters<typeof keepImpressionPhotograph>[0];
  for (const ageMinutes of ages) {
    const shown = { impression, photograph: 'photograph', takenAt: null, ageMinutes };
    await keepImpressionPhotograph(records, edition, shown, { id: 'pull', at });
  }
  return { pull: kept.at(-1)!, attached: attached.at(-1) };
}

test('a pull of an impression carries its number at the press; one that is not in the ledger yet counts as the next', async () => {
  const { pull } = await keptOf('b', [5]);
  expect(pull).toMatchObject({ number: 2, kind: 'edition', who: 'P.R.', madeAt: at, version: 1 });
  expect((await keptOf('c', [5])).pull).toMatchObject({ number: 3, who: null, madeAt: null });
});

test('a photograph that is named once more stays one, with the age that was said last', async () => {
  const { pull, attached } = await keptOf('a', [5, 1440]);
  expect(pull.photographs).toMatchObject([{ photograph: 'photograph', ageMinutes: 1440 }]);
  expect([pull.version, attached]).toEqual([2, ['photograph']]);
});

test('what an edition does not say of its paper and ink is not known of the pull', async () => {
  const { pull } = await keptOf('a', [null]);
  expect([pull.damp, pull.ink, pull.paper.words]).toEqual([null, null, 'not recorded']);
});
