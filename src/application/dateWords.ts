import { isoDayWords } from '../science/calendar/dateWords.ts';

/** A day as people read it, `26 Nov 2026`, in this machine's own time zone. */
export function dateWords(date: Date): string {
  const two = (figure: number) => String(figure).padStart(2, '0');
  return isoDayWords(`${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`);
}
