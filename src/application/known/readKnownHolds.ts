import type { EtchTable } from '../../records/etch.ts';
import type { HoldObservation, KnownHolds, TableAdvice } from '../../records/knownHolds.ts';
import type { Medium } from '../../records/medium.ts';
import { mediumCatalogue } from '../../studio/etch/mediumCatalogue.ts';
import { knownHolds } from '../../studio/trials/known/knownHolds.ts';
import { shownTestStoneReading } from '../testStones/shownTestStone.ts';
import { holdsOfWork } from './holdsOfWork.ts';
import type { KnownParts } from './knownParts.ts';

/** As many at a time as a page of a list holds. */
const pageSize = 100;

/** What this room knows of media and etches: every test stone that was read, and the last measured pull of every work. */
export async function readKnownHolds(parts: KnownParts): Promise<KnownHolds> {
  const own = await parts.store.media.list();
  const media = [...mediumCatalogue, ...own];
  const nameOf = (written: string) =>
    media.find(({ id, name }) => id === written || name === written)?.name ?? written;
  const observations = [...(await ofTestStones(parts)), ...(await ofWorks(parts))].map((one) => ({
    ...one,
    medium: nameOf(one.medium),
  }));
  const [newest] = (await parts.store.etchTables.list()).toSorted(
    (a, b) => Number(a.starting) - Number(b.starting) || b.savedAt.localeCompare(a.savedAt),
  );
  const table = newest ? await parts.store.etchTables.find(newest.id) : null;
  return knownHolds(observations, (name) => {
    const medium = media.find((one) => one.name === name);
    return table && medium ? adviceOn(table.table, medium) : null;
  });
}

async function ofTestStones(parts: KnownParts): Promise<HoldObservation[]> {
  const found: HoldObservation[] = [];
  for (let after: string | null = null, more = true; more; ) {
    const listed = await parts.store.testStones.list({ search: '', putBy: 'no', after, limit: pageSize });
    for (const stone of listed?.page ?? []) {
      // what is sealed still tells nothing here
      const reading = await shownTestStoneReading(parts, stone.id);
      if (!reading.ok) continue;
      for (const { treatment, strip, square, hold, intention } of reading.value.findings) {
        const { medium, etch } = treatment;
        if (hold === null || !medium || !etch || (intention !== 'image' && intention !== 'control')) continue;
        // A test stone drawn anew on a stone is that stone again.
        found.push({
          stone: stone.stoneId ?? stone.id,
          from: 'test-stone',
          strip: `${stone.id} ${strip ?? square}`,
          medium,
          etch,
          hold,
        });
      }
    }
    after = listed?.next ?? null;
    more = after !== null;
  }
  return found;
}

async function ofWorks(parts: KnownParts): Promise<HoldObservation[]> {
  const found: HoldObservation[] = [];
  for (let after: string | null = null, more = true; more; ) {
    const listed = await parts.store.works.list({
      search: '',
      putBy: 'no',
      stone: null,
      stage: null,
      after,
      limit: pageSize,
    });
    for (const { id } of listed?.works ?? []) found.push(...(await holdsOfWork(parts, id)));
    after = listed?.next ?? null;
    more = after !== null;
  }
  return found;
}

/** The row that the table has for a medium whose strength it decides by itself; null where the deposit decides, or nothing. */
function adviceOn(table: EtchTable, medium: Medium): TableAdvice | null {
  const { rule } = medium;
  const strength = rule.kind === 'fixed' ? rule.strength : rule.kind === 'by-deposit' ? rule.otherwise : null;
  const row = table.rows.find((one) => one.strength === strength);
  if (!row) return null;
  return {
    table: table.name,
    row: row.name,
    basis: row.basis.basis,
    sources: row.advice ?? [],
    choice: row.choice ?? null,
  };
}
