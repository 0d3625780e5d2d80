import type { TrialPatchRow } from './trialPatches.ts';
import { levelNames } from './trialUnits.ts';

/** The level that others are compared with: the one that all control patches have, else one that says nothing was done. */
export function controlLevel(rows: readonly TrialPatchRow[], factor: string): string | null {
  const levels = levelNames(rows, factor);
  const ofControls = levelNames(
    rows.filter(({ control }) => control),
    factor,
  );
  if (ofControls.length === 1 && levels.length > 1) return ofControls[0]!;
  return levels.find((level) => /^(none|control)$/i.test(level)) ?? null;
}
