import { readFileSync } from 'node:fs';
import type { PicturesOfReport } from '../../../src/paper/documents/reportPictures.ts';
import type { ReportFigure, SetReport } from '../../../src/records/setReport.ts';
import { lowWater } from './lowWater.ts';

function figure(
  name: string,
  label: string,
  value: number | null,
  more: Partial<ReportFigure> = {},
): ReportFigure {
  return {
    name,
    label,
    value,
    plusMinus: null,
    unit: '',
    from: value === null ? [] : [{ record: 'work', id: 'low-water', field: 'title' }],
    of: [],
    how: 'count',
    note: '',
    ...more,
  };
}

const grams = { unit: 'g', how: 'sum, millilitres by density' } as const;
const line = (label: string, value: string | null) => ({ label, value, from: [], figure: null });

const year: SetReport = {
  schema: 'stonetone/report/1',
  engine: 'stonetone 0.1.0, engine 3',
  setAt: '2026-12-01T10:00:00.000Z',
  reportId: 'year',
  reportVersion: 3,
  title: 'A year of Twelve Tides, without acid',
  reader: 'Saltreach Harbour Trust',
  period: '2026-01-01 to 2026-11-30',
  parts: [
    {
      name: 'Aims',
      blocks: [
        {
          kind: 'words',
          paragraphs: [
            [
              {
                text: 'To print an edition of twelve tides from stones etched without nitric acid.',
                figure: null,
              },
            ],
          ],
        },
      ],
    },
    {
      name: 'What was tried',
      blocks: [
        {
          kind: 'words',
          paragraphs: [
            [
              { text: 'Two works on two stones, with ', figure: null },
              { text: '3', figure: 'pulls' },
              { text: ' pulls.', figure: null },
            ],
          ],
        },
        {
          kind: 'words',
          paragraphs: [
            [
              { text: '2', figure: 'works' },
              { text: ' works on ', figure: null },
              { text: '2', figure: 'stones' },
              { text: ' stones. At the bench ', figure: null },
              { text: '4', figure: 'runs' },
              { text: ' runs were logged, with ', figure: null },
              { text: '11', figure: 'stages' },
              { text: ' stages done. ', figure: null },
              { text: '1', figure: 'troubles' },
              { text: ' trouble was logged on the way.', figure: null },
            ],
          ],
        },
        {
          kind: 'lines',
          name: 'Low Water',
          lines: [
            line('Stone', 'S-01'),
            line('Etch table', 'Tannic route, issue 1'),
            line('Stages logged', 'first etch, washout, roll up, proofs'),
          ],
        },
      ],
    },
    {
      name: 'What was found',
      blocks: [
        {
          kind: 'words',
          paragraphs: [
            [
              { text: 'Of ', figure: null },
              { text: '5', figure: 'zones' },
              { text: ' zones measured, ', figure: null },
              { text: '4', figure: 'zones held' },
              { text: ' held and ', figure: null },
              { text: '1', figure: 'zones lost' },
              { text: ' lost.', figure: null },
            ],
          ],
        },
        {
          kind: 'comparison',
          id: 'pull-4',
          title: 'Low Water, pull 4',
          finding: 'Lights LOST in the mudbank; the post holds.',
        },
      ],
    },
    {
      name: 'Materials',
      blocks: [
        { kind: 'figures', names: ['tannic solution ml', 'nitric acid before ml'] },
        {
          kind: 'balance',
          rows: [
            {
              hazard: 'corrosive',
              words: 'eats skin and eyes',
              before: 'eats skin and eyes before g',
              now: 'eats skin and eyes now g',
              less: 'eats skin and eyes less g',
            },
            {
              hazard: 'irritant',
              words: 'irritates',
              before: 'irritates before g',
              now: 'irritates now g',
              less: 'irritates less g',
            },
          ],
          why: ['the density of tannic solution is not entered'],
        },
      ],
    },
    {
      name: 'Not recorded',
      blocks: [
        {
          kind: 'gaps',
          groups: [
            {
              record: 'work',
              id: 'slack-water',
              name: 'Slack Water, on S-03',
              items: ['washout time', 'how much gum was poured'],
            },
          ],
        },
      ],
    },
  ],
  figures: [
    figure('works', 'Works', 2),
    figure('stones', 'Stones', 2),
    figure('runs', 'Runs logged at the bench', 4, { note: 'those that began in the period' }),
    figure('stages', 'Stages logged as done', 11),
    figure('troubles', 'Troubles logged', 1),
    figure('pulls', 'Pulls recorded', 3),
    figure('zones', 'Zones measured', 5),
    figure('zones held', 'Zones held', 4),
    figure('zones lost', 'Zones lost', 1),
    figure('tannic solution ml', 'Tannic solution laid', 31, { unit: 'ml', how: 'sum' }),
    figure('nitric acid before ml', 'Nitric acid used before', 40, {
      unit: 'ml',
      how: 'as kept',
      from: [{ record: 'report', id: 'year', field: 'replacements.0.beforeMl' }],
      note: 'typed, from the bottles of the year before',
    }),
    figure('eats skin and eyes before g', 'What eats skin and eyes, before', 56.4, grams),
    figure('eats skin and eyes now g', 'What eats skin and eyes, now', 0, grams),
    figure('eats skin and eyes less g', 'What eats skin and eyes, less by', 56.4, {
      unit: 'g',
      how: 'first minus second',
      from: [],
      of: ['eats skin and eyes before g', 'eats skin and eyes now g'],
    }),
    figure('irritates before g', 'What irritates, before', 0, grams),
    figure('irritates now g', 'What irritates, now', null, {
      ...grams,
      note: 'the density of tannic solution is not entered',
    }),
    figure('irritates less g', 'What irritates, less by', null, { unit: 'g' }),
  ],
  gaps: ['washout time (Slack Water, on S-03)', 'how much gum was poured (Slack Water, on S-03)'],
  unknownFigures: ['moonbeams'],
};

const read = (file: string) => new Uint8Array(readFileSync(new URL(`../pictures/${file}`, import.meta.url)));
const pictures: PicturesOfReport = {
  'pull-4': { record: lowWater, stone: read('stone.jpg'), proof: read('proof.jpg') },
};

/** A report as it is set, with its pictures. */
export const reports = { year, pictures };
