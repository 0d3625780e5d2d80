import type { FailureEntry } from './failureEntry.ts';

/** What may be wrong with zones, tables, plans, mixtures and series. */
export const craftFailures = {
  'zones-malformed': {
    sentence: 'The zones could not be read: {why}.',
    remedy: 'See docs for the form of zones.json.',
  },
  'zone-outside': {
    sentence: 'Zone {id} reaches outside the work rectangle ({width} x {height} mm).',
    remedy: 'Keep every point of a zone inside the rectangle.',
  },
  'zone-self-crossing': {
    sentence: 'The outline of zone {id} crosses itself.',
    remedy: 'Draw the outline once round, without crossing.',
  },
  'zone-degenerate': {
    sentence: 'Zone {id} has no area.',
    remedy: 'Give at least three points that enclose an area.',
  },
  'zone-duplicate': { sentence: 'Two zones carry the id {id}.', remedy: 'Give every zone an id of its own.' },
  'plan-malformed': {
    sentence: 'The work to plan could not be read: {why}.',
    remedy: 'Mend {field}; docs/formats.md shows the form.',
  },
  'stone-impossible': {
    sentence: 'A stone of {width} x {height} x {thickness} mm is not possible here: {why}.',
    remedy: 'Give width, height and thickness in millimetres, such as 400, 500 and 80.',
  },
  'zone-off-stone': {
    sentence: 'Zone {id} reaches outside the stone ({width} x {height} mm).',
    remedy: 'Keep every point of a zone on the stone.',
  },
  'zone-id-reserved': {
    sentence: 'A zone carries the id ground, which means the stone outside all zones.',
    remedy: 'Give that zone another id.',
  },
  'table-malformed': {
    sentence: 'The etch table could not be used: {why}.',
    remedy: 'Name tannic or acid-in-gum, or mend {field} in your table; docs/formats.md shows the form.',
  },
  'mixture-malformed': {
    sentence: 'The mixing question could not be read: {why}.',
    remedy: 'See docs/formats.md for the kinds of question and what each needs.',
  },
  'mixture-impossible': {
    sentence: 'No such mixture can be made: {why}.',
    remedy: 'Check the strengths and amounts.',
  },
  'lift-malformed': {
    sentence: 'The lift could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'vapour-malformed': {
    sentence: 'The question about vapour could not be used: {why}.',
    remedy:
      'Give ml, roomM3, airChangesPerHour and limitMgPerM3 in one JSON file; docs/formats.md describes it.',
  },
  'series-malformed': {
    sentence: 'The series of pulls could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'suspects-malformed': {
    sentence: 'The question about suspects could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'ink-malformed': {
    sentence: 'The question about ink could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'trial-wish-malformed': {
    sentence: 'The trial could not be laid out: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'trial-does-not-fit': {
    sentence: '{patches} patches of {side} mm do not fit on a stone of {stone}; there is room for {fits} mm.',
    remedy: 'Try less at once or repeat less, take a larger stone, or more stones with fewer patches each.',
  },
  'trial-table-unreadable': {
    sentence: 'The table of the trial could not be used: {why}.',
    remedy: 'Give comma-separated text with a header line, one patch a line, its treatments by name.',
  },
} as const satisfies Record<string, FailureEntry>;
