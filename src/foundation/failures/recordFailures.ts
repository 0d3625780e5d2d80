import type { FailureEntry } from './failureEntry.ts';

/** What may stand in the way of a change to what is kept. */
export const recordFailures = {
  'stale-save': {
    sentence:
      'Somebody saved {what} since you opened it: you started from version {yours}, it is now at {kept}.',
    remedy: 'What you typed is still here: compare it with what is kept now, then save again.',
  },
  'put-by': { sentence: '{what} is put by.', remedy: 'Bring it back first, then change it.' },
  'reference-unknown': {
    sentence: 'There is no {what} with the id {id}.',
    remedy: 'Choose one from the list.',
  },
  'name-taken': { sentence: 'There is a {what} called {name} already.', remedy: 'Give it another name.' },
  'stone-in-use': {
    sentence: 'The stone {name} carries the work {work}.',
    remedy: 'Put the work by first, or keep the stone.',
  },
  'stone-too-small': {
    sentence: 'At {width} x {height} mm the stone would no longer hold {part} of the work {work}.',
    remedy: 'Correct the size, or the zones of that work first.',
  },
  'rectangle-off-stone': {
    sentence: 'The work rectangle reaches outside the stone ({width} x {height} mm).',
    remedy: 'Give an offset and a size that lie on the stone, in millimetres.',
  },
  'medium-in-use': {
    sentence: 'The medium {name} is used {where}.',
    remedy: 'Give those zones another medium first.',
  },
  'medium-fixed': {
    sentence: 'The medium {name} belongs to the catalogue that every studio starts with.',
    remedy: 'Add a medium of your own instead.',
  },
  'table-fixed': {
    sentence: 'The table {name} is one that every studio starts with and stays as it is.',
    remedy: 'Make a copy of it and edit that.',
  },
} as const satisfies Record<string, FailureEntry>;
