import type { Label } from '../../../src/records/label.ts';
import type { StoneBook } from '../../../src/records/stoneBook.ts';

/** Labels of every kind, one with a name too long for its line. */
export const labels: readonly Label[] = [
  {
    kind: 'stone',
    name: 'S-01',
    lines: ['450 × 340 mm', 'grey'],
    path: '/stones/0190a3c2-7b1e-7c44-9a51-3f6f2d1b8e01',
  },
  {
    kind: 'batch',
    name: 'Tannic, May',
    lines: ['tannic', 'from 2026-05-01', '60 g/l, pH ____'],
    path: '/batches/0190a3c2-7b1e-7c44-9a51-3f6f2d1b8e02',
  },
  {
    kind: 'print',
    name: '1/5',
    lines: ['Twelve Tides: Low Water in the Harbour at Night', 'A.T.', 'Creek rag 300', 'signed 2026-03-09'],
    path: '/editions/0190a3c2-7b1e-7c44-9a51-3f6f2d1b8e03',
  },
];

/** The life of one stone. */
export const stoneBook: StoneBook = {
  title: 'The book of stone S-01',
  facts: [
    ['Stone', 'S-01'],
    ['Size', '450 × 340 mm'],
    ['Colour', null],
  ],
  chapters: [
    {
      name: 'The stone S-01',
      entries: [
        {
          at: '2026-02-27T10:00:00Z',
          what: 'grained with 220 grit, 3 charges',
          more: '40 min, even',
          from: { record: 'stone', id: 's1', field: 'graining.0' },
        },
      ],
      notRecorded: ['how level it is'],
    },
    {
      name: 'Low Water',
      entries: [
        {
          at: null,
          what: 'pull 1, trial proof, on newsprint',
          more: '',
          from: { record: 'series', id: 'w1', field: 'pulls' },
        },
        {
          at: '2026-03-01T09:00:00Z',
          what: 'entered here',
          more: 'First of the Twelve Tides.',
          from: { record: 'work', id: 'w1', field: 'createdAt' },
        },
        {
          at: '2026-03-04T09:30:00+01:00',
          what: 'first etch',
          more: '4.3 min ±6 s',
          from: { record: 'run', id: 'r1', field: 'stages.0' },
        },
        {
          at: '2026-03-09',
          what: 'Twelve Tides: signed',
          more: 'pencil, lower right',
          from: { record: 'edition', id: 'e1', field: 'signedOn' },
        },
      ],
      notRecorded: ['washout time on S-01', 'its pulls on S-01'],
    },
  ],
  madeAt: '2026-04-02T10:00:00.000Z',
};
