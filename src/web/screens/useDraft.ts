import { useSyncExternalStore } from 'react';
import type { Draft } from '../managers/draft.ts';
import { DraftKeeper } from '../managers/draftKeeper.ts';

/** The page's one draft. */
export const draftKeeper = new DraftKeeper(window.sessionStorage);

/** The draft as it stands, drawn anew on every change. */
export function useDraft(): Draft {
  return useSyncExternalStore(draftKeeper.listen, draftKeeper.current);
}
