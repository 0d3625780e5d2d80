import type { WorkEntry } from '../../../records/workEntry.ts';

/** The states of a stone that may stand for it, best first. */
const states = { drawn: ['drawn', 'inked', 'washed-out'], inked: ['inked'] } as const;

/** The photograph that stands for a work's drawn or inked stone: the latest with its four marks; null: there is none. */
export function stonePicture({ photographs, stone }: WorkEntry, wanted: 'drawn' | 'inked') {
  const marked = [...stone.photographs, ...photographs].filter(({ corners }) => corners !== null);
  for (const state of states[wanted]) {
    const found = marked.findLast((one) => one.state === state);
    if (found) return found;
  }
  return null;
}
