import { useState } from 'react';
import { useLocation } from 'wouter';
import type { ComparisonEntry, PhotographEntry } from '../../records/comparisonEntry.ts';
import { openPhotograph } from '../client/photographs.ts';
import { draftFromEntry } from '../managers/draft.ts';
import { draftKeeper } from './useDraft.ts';

/** Takes what a comparison was made from back to the steps, at the corners; photographs that are gone are asked for there. */
export function useSetUpAnew(entry: ComparisonEntry): { setUpAnew: () => void; busy: boolean } {
  const [busy, setBusy] = useState(false);
  const [, go] = useLocation();
  const setUpAnew = async () => {
    setBusy(true);
    const { stone, proof } = entry.request;
    const ids = [stone, proof]
      .flatMap((side) => [side.photograph, side.repeat, side.flat])
      .filter((id) => id !== null);
    const found = await Promise.all(ids.map((id) => openPhotograph(id).catch(() => null)));
    const photographs = new Map<string, PhotographEntry>();
    for (const photograph of found) if (photograph) photographs.set(photograph.id, photograph);
    draftKeeper.change(() => draftFromEntry(entry, photographs));
    go('/new/stone');
  };
  return { setUpAnew: () => void setUpAnew(), busy };
}
