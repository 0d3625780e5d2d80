import { readFile } from 'node:fs/promises';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import { findComparison } from './findComparison.ts';
import { sealOfComparison } from './testStones/sealedComparison.ts';
import { zip } from './zipLibrary.ts';

/** Endings of files that are packed already; packing them again only takes time. */
const packedAlready = /\.(jpe?g|png|pdf)$/;

/** All files of a measured comparison in one ZIP archive; `not-found` until it is measured, `list-sealed` as its files are. */
export async function comparisonArchive(
  { store }: { readonly store: Pick<Store, 'comparisons' | 'resultFiles' | 'testStones'> },
  id: string,
): Promise<Result<Uint8Array>> {
  const comparison = await findComparison(store, id);
  if (!comparison.ok) return comparison;
  const sealed = await sealOfComparison({ store }, comparison.value);
  if (sealed) return fail(sealed);
  const { resultKey } = comparison.value;
  const names = resultKey === null ? [] : await store.resultFiles.names(resultKey);
  if (resultKey === null || names.length === 0) return fail(failure('not-found', { what: 'result yet' }));
  const entries: Record<string, [Uint8Array, { level: 0 | 6 }]> = {};
  for (const name of names) {
    const path = await store.resultFiles.pathOf(resultKey, name);
    if (path !== null) entries[name] = [await readFile(path), { level: packedAlready.test(name) ? 0 : 6 }];
  }
  return new Promise((resolve, reject) => {
    zip(entries, (error, archive) => (error ? reject(error) : resolve(ok(archive))));
  });
}
