import { describe, expect, it } from 'vitest';
import { hatchScale } from '../../src/records/hatchScale.ts';
import { areaDoubts, filmDoubtMl } from '../../src/studio/etch/areaDoubt.ts';
import { sheets } from './exhibits.ts';
import { pdfText } from './popplerTools.ts';
import { documentations } from './records/editions.ts';
import { lowWaterPlan } from './records/etchPlans.ts';
import { labels, stoneBook } from './records/labels.ts';
import { lowWater } from './records/lowWater.ts';
import { shelf, washoutCard } from './records/materials.ts';
import { etchesByMedium } from './records/trial.ts';
import { fullWeek } from './records/week.ts';
import { type NumberSources, unfoundNumbers } from './sheetNumbers.ts';

/** What every exhibit was asked with, beside its record. */
const asked = ['2026-11-26T09:40:00Z', 'Low Water, stone S-01', 'Low Water, pull 4'];

const { plan, request } = lowWaterPlan;
const { zones, ...chosen } = request;
/** Without outlines, which would hold any number. */
const planned = [plan, chosen, zones.map(({ polygonMm: _, ...zone }) => zone), asked];
const { registration, ...measured } = lowWater;

const ruler: NumberSources['exceptions'][number] = [
  /must measure 100 mm|100 %|\b0\s+50 mm|\b50 mm|\b100 mm/gi,
  'the check ruler and its words',
];

const traced: Readonly<Record<string, NumberSources>> = {
  'week-full': { records: [fullWeek], exceptions: [] },
  'steps-low-water': {
    records: planned,
    derived: {
      'the sum of an etch over the places that take it': [
        ...new Set(plan.zones.map(({ etch }) => etch?.name)),
      ].map((name) =>
        plan.zones.reduce((sum, { etch }) => (etch && etch.name === name ? sum + etch.ml : sum), 0),
      ),
      'the film’s ± from the area': [...areaDoubts(request).values()].flatMap(
        (doubt) => filmDoubtMl(doubt, request.filmMm) ?? [],
      ),
    },
    exceptions: [],
  },
  'map-low-water': { records: planned, exceptions: [ruler] },
  'book-stone': { records: [stoneBook], exceptions: [] },
  labels: { records: [labels], exceptions: [] },
  'sheet-low-water': {
    records: [measured, registration && { ...registration, samples: [] }, asked],
    derived: { 'how many zones': [lowWater.zones.length] },
    factors: [1, 100],
    exceptions: [
      [/(?:^|\s)(?:0|25|50|75|100)(?=\s|$)/gm, 'marks of the charts’ axes'],
      [/19 times of 20/g, 'how sure a range is'],
    ],
  },
  'card-door': { records: [shelf, asked], exceptions: [] },
  'card-start-washout': { records: [washoutCard], exceptions: [] },
  'sheet-hatch-scale': {
    records: [hatchScale, asked],
    factors: [1, 100],
    exceptions: [
      ruler,
      [/(?:^|\s)[1-5]\. /gm, 'numbers of the steps to take'],
      [/± 0\.2|standard deviation of 0\.1/g, 'our rule, said to be one'],
    ],
  },
  'edition-printed': { records: [documentations.printed, asked], exceptions: [] },
  'trial-tracing': { records: [etchesByMedium, asked], exceptions: [ruler] },
};

describe('every number of a sheet is in the records that it was made from', () => {
  for (const [name, sources] of Object.entries(traced)) {
    it(name, async () => {
      const sheet = sheets.find((one) => one.name === name)!;
      const text = await pdfText(await sheet.pdf());
      expect(unfoundNumbers(text, sources)).toEqual([]);
      expect(text, 'there are numbers to look up').toMatch(/\d/);
    });
  }

  it('and one that is kept nowhere is named with what stands around it', () => {
    const sources = { records: [{ ml: 40, at: '2026-11-26T09:40:00Z' }], exceptions: [] };
    const text = 'Lay 40 ml at 09:40 on 26 Nov 2026, page 1 of 2, then 12.5 ml after 3:07';
    expect(unfoundNumbers(text, sources)).toMatchObject(
      [/^12\.5 in “.*, then 12\.5 ml/, /^3:07 in “.*after 3:07/].map((words) => expect.stringMatching(words)),
    );
  });
});
