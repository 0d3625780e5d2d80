import { randomUUID } from 'node:crypto';
import { access, readFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { scalePicture } from '../imaging/codecs/scalePicture.ts';
import { moveDurably, writeSynced } from '../store/files/durableFiles.ts';
import type { Store } from '../store/openStore.ts';
import { findComparison } from './findComparison.ts';
import { isPicture, sealOfComparison } from './testStones/sealedComparison.ts';

interface ComparisonFiles {
  readonly store: Pick<Store, 'comparisons' | 'resultFiles' | 'testStones'>;
}

/**
 * Where one file of a measured comparison lies; `not-found` for a name that it does not have, `list-sealed` for one that says
 * what the patches of a sealed test stone were drawn with.
 */
export async function comparisonFile(
  { store }: ComparisonFiles,
  id: string,
  name: string,
): Promise<Result<string>> {
  const comparison = await findComparison(store, id);
  if (!comparison.ok) return comparison;
  const { resultKey } = comparison.value;
  const path = resultKey === null ? null : await store.resultFiles.pathOf(resultKey, name);
  if (path === null) return fail(failure('not-found', { what: 'such file' }));
  const sealed = isPicture(name) ? null : await sealOfComparison({ store }, comparison.value);
  return sealed ? fail(sealed) : ok(path);
}

/** Widths in which smaller copies are kept, px; what is asked for is rounded up to one of these. */
const copyWidthsPx = [240, 480, 960, 1920] as const;

/**
 * Where a smaller copy of a result's picture lies, at most about `widthPx` wide, made on first asking. Files that
 * are no JPEG or PNG, and pictures asked for wider than any copy, are given as they are.
 */
export async function comparisonPicture(
  parts: { readonly store: ComparisonFiles['store'] & Pick<Store, 'folder'> },
  id: string,
  name: string,
  widthPx: number,
): Promise<Result<string>> {
  const whole = await comparisonFile(parts, id, name);
  const copyPx = copyWidthsPx.find((width) => width >= widthPx);
  if (!whole.ok || copyPx === undefined || !isPicture(name)) return whole;
  const { cache, incoming, results } = parts.store.folder;
  const copy = join(cache, 'results', relative(results, dirname(whole.value)), `${copyPx}-${name}`);
  if (await isThere(copy)) return ok(copy);
  const working = join(incoming, randomUUID());
  await writeSynced(working, await scalePicture(await readFile(whole.value), copyPx));
  await moveDurably(working, copy);
  return ok(copy);
}

function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
