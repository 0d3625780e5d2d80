/** What the shelf's keys begin with that hold what is unsent of a run. */
const unsentPrefix = 'stonetone-unsent-';

/** The key under which a run's unsent events lie on the shelf. */
export function unsentKey(runId: string): string {
  return `${unsentPrefix}${runId}`;
}

/** Ids of the runs of which this browser holds something unsent: of pages too that were closed before it was sent. */
export function unsentRuns(shelf: Pick<Storage, 'length' | 'key'>): readonly string[] {
  try {
    const keys = Array.from({ length: shelf.length }, (_, index) => shelf.key(index) ?? '');
    return keys.filter((key) => key.startsWith(unsentPrefix)).map((key) => key.slice(unsentPrefix.length));
  } catch {
    return [];
  }
}
