/** A darkness or a change of it with three decimals at most, `0.04`, `0.125`; −0 is 0. */
export function darknessWords(darkness: number): string {
  const rounded = Math.round(darkness * 1000) / 1000 || 0;
  const short = rounded.toFixed(2);
  return Number(short) === rounded ? short : rounded.toFixed(3);
}

/** Darknesses that stand beside each other, all with as many decimals as the one that needs most. */
export function alikeDarknessWords(darknesses: readonly number[]): readonly string[] {
  const decimals = Math.max(...darknesses.map((one) => darknessWords(one).split('.')[1]!.length));
  return darknesses.map((one) => (Math.round(one * 1000) / 1000 || 0).toFixed(decimals));
}

/** `a`, `a and b`, `a, b and c`. */
export function listWords(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** Numbers of pulls, runs of three or more drawn together: `pull 4`, `pulls 1, 2, 5–8`. */
export function pullWords(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const n of numbers) {
    const run = runs.at(-1);
    if (run && n === run.at(-1)! + 1) run.push(n);
    else runs.push([n]);
  }
  const parts = runs.flatMap((run) => (run.length > 2 ? [`${run[0]}–${run.at(-1)}`] : run.map(String)));
  return `${numbers.length === 1 ? 'pull' : 'pulls'} ${listWords(parts)}`;
}
