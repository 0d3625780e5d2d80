/** The ground's own letter. */
export const groundLetter = 'G';

/** Without G, which is the ground's, and without I and O, which look like figures. */
const letters = 'ABCDEFHJKLMNPQRSTUVWXYZ';

/**
 * What a zone is called on the map and the step sheet: A, B, C … without G, I and O; after Z come AA, AB …
 * @param position of the zone among the zones of its work, from 0.
 */
export function zoneLetter(position: number): string {
  const last = letters[position % letters.length]!;
  const before = Math.floor(position / letters.length) - 1;
  return before < 0 ? last : zoneLetter(before) + last;
}
