/** The last part of a name as a person's machine calls it, without control characters, at most 200 characters. */
export function shownFileName(given: string): string {
  const last = given.split(/[\\/]/).at(-1) ?? '';
  const clean = last.replace(/\p{C}/gu, '').trim().slice(-200);
  return clean === '' ? 'photograph' : clean;
}
