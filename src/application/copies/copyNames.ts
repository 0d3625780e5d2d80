const named = /^stonetone-(\d{4}-\d\d-\d\d)\.tar$/;
const half = /^\.stonetone-\d{4}-\d\d-\d\d\.tar(\.database)?\.part(-journal|-wal|-shm)?$/;

/** Name of the copy of a day, by the machine's own calendar. */
export function copyName(at: Date): string {
  const day = [at.getFullYear(), at.getMonth() + 1, at.getDate()].map((part) =>
    String(part).padStart(2, '0'),
  );
  return `stonetone-${day.join('-')}.tar`;
}

/** The ISO day of a daily copy; null for any other file. */
export function dayOfCopy(fileName: string): string | null {
  return named.exec(fileName)?.[1] ?? null;
}

/** Whether a file was left by a copy that was broken off. */
export function isHalfCopy(fileName: string): boolean {
  return half.test(fileName);
}
