/** What a key or a pedal does at the bench. */
export type BenchKeyAct = 'first' | 'undo' | 'trouble';

const acts: Readonly<Record<string, BenchKeyAct>> = {
  ' ': 'first',
  Enter: 'first',
  ArrowRight: 'first',
  ArrowDown: 'first',
  PageDown: 'first',
  ArrowLeft: 'undo',
  ArrowUp: 'undo',
  PageUp: 'undo',
  t: 'trouble',
};

/**
 * @param onTarget whether a button or link has the focus: space and enter are then its own
 * @returns null where the key means nothing here
 */
export function benchKey(key: string, onTarget: boolean): BenchKeyAct | null {
  if (onTarget && (key === ' ' || key === 'Enter')) return null;
  return acts[key] ?? null;
}
