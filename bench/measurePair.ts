import type { MeasuredComparison, MeasureInput } from '../src/application/comparison/measureInput.ts';
import { measureComparison } from '../src/application/measureComparison.ts';
import type { ScoredCase } from './accuracyTable.ts';
import type { BenchPair } from './benchPair.ts';
import { quantile, scorePair } from './scorePair.ts';

/** Measures a pair with the engine and scores it; a failure of the engine is thrown with its sentence. */
export async function measurePair(pair: BenchPair): Promise<ScoredCase> {
  const started = performance.now();
  const measured = await measure(pair.input);
  const seconds = (performance.now() - started) / 1000;
  const score = await scorePair(pair, measured);
  const again = pair.again ? await measure(pair.again) : null;
  return { pair, score, seconds, repeatDifference: again ? coverageDifference(measured, again) : null };
}

async function measure(input: MeasureInput): Promise<MeasuredComparison> {
  const measured = await measureComparison(
    input,
    { progress: () => undefined, stopped: () => false },
    new Date(),
  );
  if (!measured.ok) throw new Error(`${measured.error.code}: ${measured.error.message}`);
  return measured.value;
}

/** Median absolute difference of zone coverage, drawn and printed together. */
function coverageDifference(first: MeasuredComparison, second: MeasuredComparison): number {
  const differences = first.record.zones.flatMap((zone) => {
    const other = second.record.zones.find((candidate) => candidate.id === zone.id);
    return (['drawn', 'printed'] as const).flatMap((which) => {
      const [a, b] = [zone[which], other?.[which]];
      return a && b ? [Math.abs(a.coverage - b.coverage)] : [];
    });
  });
  return quantile(differences, 0.5);
}
