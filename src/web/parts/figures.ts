/** A share 0..1 as a percentage for a large figure: `<1` for a trace, whole numbers otherwise; `–` where nothing is known. */
export function percentFigure(share: number | null): string {
  if (share === null) return '–';
  if (share > 0 && share < 0.005) return '<1';
  return String(Math.round(share * 100));
}

/** A coverage to two places with half its 95 % interval: `0.24 ± 0.02`. An interval under 0.005 reads ± 0.01. */
export function coverageWords(reading: { coverage: number; low: number; high: number } | null): string {
  if (reading === null) return '–';
  return `${reading.coverage.toFixed(2)} ± ${halfWidth(reading.low, reading.high)}`;
}

/** Half of an interval to two places, rounded up to 0.01 so that no reading claims to be exact. */
export function halfWidth(low: number, high: number): string {
  return Math.max(0.01, (high - low) / 2).toFixed(2);
}
