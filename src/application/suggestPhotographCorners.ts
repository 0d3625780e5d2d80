import type { Result } from '../foundation/result.ts';
import type { Store } from '../store/openStore.ts';
import { findPhotograph } from './findPhotograph.ts';
import type { PictureDesk } from './pictures/pictureDesk.ts';
import type { CornerSuggestion } from './pictures/pictureTask.ts';

/** Where the work rectangle seems to lie on a kept photograph, for a person to correct. */
export async function suggestPhotographCorners(
  parts: { readonly store: Pick<Store, 'photographs'>; readonly desk: Pick<PictureDesk, 'cornersOf'> },
  id: string,
): Promise<Result<CornerSuggestion>> {
  const photograph = await findPhotograph(parts.store, id);
  return photograph.ok ? parts.desk.cornersOf(photograph.value) : photograph;
}
