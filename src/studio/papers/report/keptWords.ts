import type { KeptAt } from '../../../records/keptAt.ts';
import type { ReportFigure } from '../../../records/setReport.ts';

/** A record's field as a reader finds it over HTTP or asks the studio for it. */
export function keptWords({ record, id, field }: KeptAt): string {
  return `${record} ${id}, ${field}`;
}

/** How many fields a page prints of one figure before it says how many more there are. */
const mostPrinted = 3;

/** Where a figure comes from, short enough for a page; a file with all of it is the report's JSON. */
export function sourceWords({ from, of, how, note }: ReportFigure): string {
  const places = from.slice(0, mostPrinted).map(keptWords);
  const more = from.length > mostPrinted ? `, and ${from.length - mostPrinted} more` : '';
  const where =
    of.length > 0
      ? `${of[0]} minus ${of[1]}`
      : from.length === 0
        ? 'kept nowhere'
        : `${how === 'as kept' ? '' : `${how} of `}${places.join('; ')}${more}`;
  return note === '' ? where : `${where}. ${note.slice(0, 1).toUpperCase()}${note.slice(1)}`;
}
