/** A day as people read it, `26 November 2026`, in this machine's own time zone. */
export function dateWords(date: Date): string {
  return new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }).format(date);
}
