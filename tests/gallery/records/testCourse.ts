import { trialWishSchema } from '../../../src/contract/trialWish.ts';
import type { TestCourseSheetInput } from '../../../src/paper/sheets/testCourseSheet.ts';
import type { PlanZone } from '../../../src/records/etch.ts';
import type { TreatmentKind } from '../../../src/records/testPlan.ts';
import { lineStages } from '../../../src/studio/bench/lineStages.ts';
import { etchOfLevel } from '../../../src/studio/etch/etchOfLevel.ts';
import { etchPlan } from '../../../src/studio/etch/etchPlan.ts';
import { tannicTable } from '../../../src/studio/etch/tannicTable.ts';
import { etchedPlaces } from '../../../src/studio/trials/bench/etchedPlaces.ts';
import { testCourse } from '../../../src/studio/trials/bench/testCourse.ts';
import { stonesOfTrial } from '../../../src/studio/trials/design/stonesOfTrial.ts';
import { trialLayout } from '../../../src/studio/trials/design/trialLayout.ts';

const wish = trialWishSchema.parse({
  title: 'T-5',
  stone: { widthMm: 300, heightMm: 400 },
  whole: { name: 'etch', levels: ['None', 'gum alone', 'gum and tannic 1:1'] },
  sub: { name: 'medium', levels: ['crayon-2', 'waxy pencil', 'graphite'] },
  stripRepeats: 2,
  patchRepeats: 2,
  control: 'None',
  seed: 7,
});
const kinds: Readonly<Record<string, TreatmentKind>> = { etch: 'etch', medium: 'medium' };
const layout = trialLayout(wish);
if (!layout.ok) throw new Error(layout.error.message);
const stone = { id: 't-5', ...stonesOfTrial(wish, layout.value)[0]! };
const zones = etchedPlaces(stone.patches, kinds, stone.sizeMm).map(
  ({ id, name, polygonMm, levels }): PlanZone => {
    const found = etchOfLevel(levels.etch!, tannicTable)!;
    const set = { row: found.row, why: 'the test’s own', bare: found.row === null };
    return { id, name, medium: 'test patches', polygonMm: polygonMm.map(([x, y]) => [x + 15, y + 25]), set };
  },
);
const byReplicate = [0, 1].map((round) =>
  wish.whole!.levels.map((level) => {
    const own = etchedPlaces(stone.patches, kinds, stone.sizeMm).filter(
      ({ levels }) => levels.etch === level,
    );
    return own[round]!.id;
  }),
);
const request = {
  stone: { widthMm: 300, heightMm: 400, thicknessMm: 60, colour: 'grey' },
  zones,
  table: tannicTable,
  tannic: { gramsPerLitre: 20, pH: 3.1, gum: true },
  people: 2 as const,
  filmMm: 0.5,
  layMm2PerSecond: 1500,
  guardMm: 5,
  rounds: byReplicate,
};
const plan = {
  id: 'plan',
  workId: 'work',
  createdAt: '2026-04-02T10:00:00.000Z',
  workVersion: 1,
  table: { id: 'tannic', version: 1, name: 'Tannic route' },
  feasible: true,
  tannicBatchId: null,
  request,
  plan: etchPlan(request),
};
const day = { dateText: '2 April 2026', createdAt: new Date('2026-04-02T10:00:00Z') };

/** T-5, a planned test: for whoever etches, in two rounds, and for whoever draws. */
export const testCourses: Readonly<Record<'etch' | 'draw', TestCourseSheetInput>> = {
  etch: { course: { ...testCourse(stone, kinds, lineStages, 'etch'), plan }, ...day },
  draw: { course: { ...testCourse(stone, kinds, lineStages, 'draw'), plan: null }, ...day },
};
