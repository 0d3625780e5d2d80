/** The six digits that a scanned address carries behind its #; null where it carries none. */
export function codeInHash(hash: string): string | null {
  return /^#(\d{6})$/.exec(hash)?.[1] ?? null;
}
