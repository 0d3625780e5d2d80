import type { RunEvent } from '../../../records/run.ts';

/** What goes wrong at the stone, as one picks it. */
export const troubleKinds: readonly string[] = [
  'etch ran over the edge',
  'strong etch in light work',
  'etch dried where it lay',
  'drawing smeared',
  'gum streaked',
  'base uneven',
  'scum',
  'something dropped or broke',
  'something else',
];

/** Whether a trouble was told that nobody has said anything of since; what was taken back is none. */
export function troubleUntold(events: readonly RunEvent[]): boolean {
  const undone = new Set(events.flatMap((event) => (event.kind === 'undo' ? [event.payload.clientId] : [])));
  const counted = events.filter(({ clientId }) => !undone.has(clientId));
  const trouble = counted.findLastIndex(({ kind }) => kind === 'trouble');
  return trouble >= 0 && !counted.slice(trouble).some((event) => noteWords(event)?.about === 'trouble');
}

/** What a note says, where it says it in words. */
export function noteWords(event: RunEvent): { readonly about: string | null; readonly words: string } | null {
  if (event.kind !== 'note' || typeof event.payload !== 'object' || event.payload === null) return null;
  const { about, words } = event.payload as { readonly about?: unknown; readonly words?: unknown };
  if (typeof words !== 'string' || words === '') return null;
  return { about: typeof about === 'string' ? about : null, words };
}
