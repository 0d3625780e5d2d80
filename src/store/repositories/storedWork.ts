import type { Selectable } from 'kysely';
import type { Work, WorkStage } from '../../records/work.ts';
import type { WorkMediumTable, WorkTable } from '../database/recordTables.ts';
import { foldForSearch } from './searchText.ts';

/** What the search looks through: title, stage, note, names and media of the zones. */
function searchTextOf({ title, stage, note, zones }: Work): string {
  return foldForSearch(
    [title, stage, note, ...zones.flatMap(({ name, medium }) => [name, medium])].join(' '),
  );
}

/** A work's row. */
export function workToRow(work: Work): WorkTable {
  const { id, putBy, version, createdAt, changedAt, sample, ...draft } = work;
  return {
    id,
    created_at: createdAt,
    changed_at: changedAt,
    version,
    put_by: putBy ? 1 : 0,
    sample: sample ? 1 : 0,
    search_text: searchTextOf(work),
    stone_id: draft.stoneId,
    title: draft.title,
    stage: draft.stage,
    halfway: draft.origin.kind === 'halfway' ? 1 : 0,
    zone_count: draft.zones.length,
    record_json: JSON.stringify(draft),
  };
}

/** A work from its row. */
export function workFromRow(row: Selectable<WorkTable>): Work {
  return {
    ...(JSON.parse(row.record_json) as Omit<Work, 'id'>),
    id: row.id,
    stage: row.stage as WorkStage,
    putBy: row.put_by === 1,
    version: row.version,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    sample: row.sample === 1,
  };
}

/** Each medium that a work's zones are in, once, with the first zone that is. */
export function mediaOf({ id, zones }: Work): readonly WorkMediumTable[] {
  const first = new Map<string, string>();
  for (const zone of zones) if (!first.has(zone.medium)) first.set(zone.medium, zone.name);
  return [...first].map(([medium, name]) => ({ work_id: id, medium, zone_name: name }));
}
