import { expect, it } from 'vitest';
import { reportFromStored, type StoredReport } from './storedReport.ts';

const rest = { id: 'year', title: 'A year' } as unknown as StoredReport;

it('reads words that were kept with figures in braces', () => {
  const kept = 'We made {pulls} pulls; { alone, {{braces}} and { zones held }.';
  expect(reportFromStored({ ...rest, words: { aims: kept, found: '' } })).toMatchObject({
    title: 'A year',
    words: {
      aims: [
        'We made ',
        { figure: 'pulls' },
        ' pulls; { alone, {braces} and ',
        { figure: 'zones held' },
        '.',
      ],
      found: [],
      next: [],
    },
  });
});

it('leaves words as they are kept now', () => {
  const aims = ['Of {these} ', { figure: 'pulls' }];
  expect(reportFromStored({ ...rest, words: { aims } }).words.aims).toEqual(aims);
});
