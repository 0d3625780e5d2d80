/** `a`, `a and b`, `a, b and c`. @param names at least one; long lists end in how many more there are. */
export function listWords(names: readonly string[], most = 5): string {
  const shown = names.length > most ? [...names.slice(0, most), `${names.length - most} more`] : names;
  return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}
