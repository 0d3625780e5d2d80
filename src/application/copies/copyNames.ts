const named = /^stonetone-(\d{4}-\d\d-\d\d)\.tar$/;
const half = /^\.\.?stonetone-\d{4}-\d\d-\d\d\.tar(\.new)?(\.database)?(\.part)?(-journal|-wal|-shm)?$/;

/** ISO day of a moment, by the machine's own calendar. */
export function copyDay(at: Date): string {
  return [at.getFullYear(), at.getMonth() + 1, at.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
}

/** Name of the copy of an ISO day. */
export function copyName(day: string): string {
  return `stonetone-${day}.tar`;
}

/** Name under which a copy is made that is to take the place of another. */
export function newCopyName(day: string): string {
  return `.${copyName(day)}.new`;
}

/** The ISO day of a daily copy; null for any other file. */
export function dayOfCopy(fileName: string): string | null {
  return named.exec(fileName)?.[1] ?? null;
}

/** Whether a file was left by a copy that was broken off. */
export function isHalfCopy(fileName: string): boolean {
  return half.test(fileName);
}
