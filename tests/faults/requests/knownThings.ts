import type { Random } from '../../../src/foundation/random.ts';
import { oneOf } from './choose.ts';

/** What the answers so far told of records that there are, so that later requests can name them. */
export interface KnownThings {
  /** Reads an answer's body; `parent` is the record in whose path it was asked, `collection` what a lone record is. */
  learn(body: unknown, collection: string, parent: string | null): void;
  /** An id out of a collection, one of this parent's where there is one; null where none is known. */
  idIn(collection: string, random: Random, parent?: string): string | null;
  /** A record of a collection that has records of another one; any of it where none is known to. */
  parentIn(collection: string, children: string, random: Random): string | null;
  /** An id for a field of that name, one of this parent's where there is one; null where the name says nothing. */
  idFor(field: string, random: Random, parent?: string): string | null;
  /** The version that a record was last seen in. */
  versionOf(id: string): number | null;
  /** Keeps a whole answer, to be sent again as it is or spoiled. */
  remember(name: string, body: unknown): void;
  remembered(name: string): unknown;
}

/** Which collection a field's id comes from, where its name does not say so itself. */
const collectionOf: Readonly<Record<string, string>> = {
  photograph: 'photographs',
  repeat: 'photographs',
  flat: 'photographs',
  medium: 'media',
  pull: 'pulls',
  approvalPullId: 'pulls',
  tannicBatchId: 'batches',
  batchId: 'batches',
  beforeMaterialId: 'materials',
  nowMaterialId: 'materials',
  tableId: 'etch-tables',
  from: 'etch-tables',
  edition: 'editions',
  since: 'runs',
  earlier: 'comparisons',
  with: 'test-stones',
  impression: 'clientIds',
  patch: 'patches',
  ink: 'inks',
};

/** Most ids that are kept of a collection: old ones make room. */
const keptOfOne = 60;

/** Starts with nothing known. */
export function createKnownThings(): KnownThings {
  const ids = new Map<string, string[]>();
  const versions = new Map<string, number>();
  const parents = new Map<string, Set<string>>();
  const whole = new Map<string, unknown>();

  function keep(name: string, id: string): void {
    const collection = name.replace(/^tables$/, 'etch-tables');
    const list = ids.get(collection) ?? [];
    ids.set(collection, list);
    if (list.includes(id)) return;
    list.push(id);
    if (list.length > keptOfOne) list.splice(5, 1);
  }

  function learn(body: unknown, collection: string, parent: string | null): void {
    if (Array.isArray(body)) {
      for (const item of body.slice(0, 30)) learn(item, collection, parent);
      return;
    }
    if (typeof body !== 'object' || body === null) return;
    const record = body as Record<string, unknown>;
    if (typeof record.id === 'string') {
      keep(collection, record.id);
      if (parent !== null) {
        keep(`${parent}/${collection}`, record.id);
        parents.set(collection, (parents.get(collection) ?? new Set()).add(parent));
      }
      if (typeof record.version === 'number') versions.set(record.id, record.version);
    }
    if (typeof record.clientId === 'string') keep('clientIds', record.clientId);
    const own = typeof record.id === 'string' ? record.id : parent;
    for (const [name, value] of Object.entries(record)) learn(value, name, own);
  }

  function idIn(collection: string, random: Random, parent?: string): string | null {
    const list = (parent && ids.get(`${parent}/${collection}`)) || ids.get(collection) || [];
    return list.length === 0 ? null : oneOf(random, list);
  }

  return {
    learn,
    idIn,
    parentIn(collection, children, random) {
      const all = ids.get(collection) ?? [];
      const having = all.filter((id) => parents.get(children)?.has(id));
      return having.length > 0 ? oneOf(random, having) : idIn(collection, random);
    },
    idFor(field, random, parent) {
      const plain = field.replace(/Id$/, '');
      const collection =
        collectionOf[field] ?? [plain, `${plain}s`, `${plain}es`].find((name) => ids.has(name));
      return collection === undefined ? null : idIn(collection, random, parent);
    },
    versionOf: (id) => versions.get(id) ?? null,
    remember: (name, body) => void whole.set(name, body),
    remembered: (name) => structuredClone(whole.get(name) ?? null),
  };
}
