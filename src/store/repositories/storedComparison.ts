import type { Insertable, Selectable } from 'kysely';
import type { Failure } from '../../foundation/failure.ts';
import type { ComparisonRequest, ComparisonState } from '../../records/comparisonEntry.ts';
import type { ComparisonTable } from '../database/tables.ts';
import { foldForSearch } from './searchText.ts';

/** A comparison's row, without what the measuring queue alone knows (progress) and the files on disk. */
export interface StoredComparison {
  readonly id: string;
  readonly title: string;
  readonly createdAt: string;
  readonly state: ComparisonState;
  readonly sample: boolean;
  readonly request: ComparisonRequest;
  readonly finding: string | null;
  readonly failure: Failure | null;
  /** Names the kept result; null until there is one. */
  readonly resultKey: string | null;
  readonly queuedAt: string;
  readonly interruptions: number;
}

/** A row of the list: no request, which may be long. */
export type ListedComparison = Pick<
  StoredComparison,
  'id' | 'title' | 'createdAt' | 'state' | 'sample' | 'finding'
>;

export interface ComparisonPage {
  readonly comparisons: readonly ListedComparison[];
  /** Id to give as `after` for the next page; null on the last. */
  readonly next: string | null;
}

/** What changes together when a comparison moves to another state; a field left out stays. */
export interface ComparisonMove {
  readonly to: ComparisonState;
  readonly finding?: string | null;
  readonly failure?: Failure | null;
  readonly resultKey?: string | null;
  readonly queuedAt?: string;
  readonly interruptions?: number;
}

/** A comparison from its row. */
export function comparisonFromRow(row: Selectable<ComparisonTable>): StoredComparison {
  return {
    id: row.id,
    title: row.title,
    createdAt: row.created_at,
    state: row.state as ComparisonState,
    sample: row.sample === 1,
    request: JSON.parse(row.request_json) as ComparisonRequest,
    finding: row.finding,
    failure: row.failure_json === null ? null : (JSON.parse(row.failure_json) as Failure),
    resultKey: row.result_key,
    queuedAt: row.queued_at,
    interruptions: row.interruptions,
  };
}

/** What the search looks through: title, finding, names and media of the zones. */
export function comparisonSearchText(request: ComparisonRequest, finding: string | null): string {
  const words = [request.title, finding ?? '', ...request.zones.flatMap((zone) => [zone.name, zone.medium])];
  return foldForSearch(words.join(' '));
}

/** A comparison's row, not put by. */
export function comparisonToRow(comparison: StoredComparison): Insertable<ComparisonTable> {
  return {
    id: comparison.id,
    title: comparison.title,
    created_at: comparison.createdAt,
    state: comparison.state,
    sample: comparison.sample ? 1 : 0,
    request_json: JSON.stringify(comparison.request),
    finding: comparison.finding,
    failure_json: comparison.failure === null ? null : JSON.stringify(comparison.failure),
    result_key: comparison.resultKey,
    queued_at: comparison.queuedAt,
    interruptions: comparison.interruptions,
    put_by_at: null,
    search_text: comparisonSearchText(comparison.request, comparison.finding),
  };
}

/** Ids of all photographs that a comparison stands on, each once. */
export function photographsOf({ stone, proof }: ComparisonRequest): string[] {
  const all = [stone, proof].flatMap((side) => [side.photograph, side.repeat, side.flat]);
  return [...new Set(all.filter((id) => id !== null))];
}
