import { asWritten } from '../../words/asWritten.ts';

/** What a place is called: the ground by the trade's word, a zone as whoever drew it called it. */
export function zoneName({ id, name }: { readonly id: string; readonly name: string }): string {
  return id === 'ground' ? name : asWritten(name);
}
