/**
 * The words out of a list that are written most alike; null where none comes near: more than two in five letters would have to
 * change. Case counts for nothing.
 */
export function nearestWords(words: string, known: readonly string[]): string | null {
  const typed = words.trim().toLowerCase();
  const ranked = known
    .map((name) => ({ name, away: changesBetween(typed, name.toLowerCase()) }))
    .toSorted((a, b) => a.away - b.away);
  const [best] = ranked;
  return best && best.away <= 0.4 * Math.max(typed.length, best.name.length) ? best.name : null;
}

/** Letters to put in, take out or change (V. I. Levenshtein 1966, by dynamic programming). */
function changesBetween(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row++) {
    const line = [row];
    for (let column = 1; column <= to.length; column++) {
      const changed = above[column - 1]! + (from[row - 1] === to[column - 1] ? 0 : 1);
      line.push(Math.min(changed, above[column]! + 1, line[column - 1]! + 1));
    }
    above = line;
  }
  return above[to.length]!;
}
