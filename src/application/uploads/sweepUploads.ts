import type { Store } from '../../store/openStore.ts';
import { uploadLifeMs } from './uploadParts.ts';

/** Lets go of uploads whose day is over. */
export async function sweepUploads(parts: {
  readonly store: Pick<Store, 'uploadFiles'>;
  readonly now: () => Date;
}): Promise<void> {
  const { uploadFiles } = parts.store;
  const latest = parts.now().getTime() - uploadLifeMs;
  for (const { id, startedAt } of await uploadFiles.all()) {
    if (Date.parse(startedAt) <= latest) await uploadFiles.drop(id);
  }
}
