import type { TestStoneDraft } from '../../../records/testStone.ts';
import type { TrialWish } from '../../../records/trialDesign.ts';
import { stonesOfTrial } from '../../../studio/trials/design/stonesOfTrial.ts';
import { trialLayout } from '../../../studio/trials/design/trialLayout.ts';

/** What Saltreach wanted to know after T-1, on two stones, places drawn by lot. Invented. */
const wish: TrialWish = {
  title: 'Which etch holds which medium',
  stone: { widthMm: 300, heightMm: 400 },
  stones: 2,
  whole: { name: 'etch', levels: ['gum alone', 'gum and tannic 1:1', 'tannic solution'] },
  sub: { name: 'medium', levels: ['crayon #5', 'crayon #3', 'crayon #1', 'tusche in water'] },
  layout: 'split-plot',
  blocks: 'head-tail',
  perStone: null,
  cameraPixels: null,
  patchRepeats: 1,
  stripRepeats: 2,
  control: 'gum and tannic 1:1',
  patchMm: 36,
  gutterMm: 8,
  stripGutterMm: 14,
  border: { sidesMm: 15, endsMm: 25 },
  seed: 1207,
  wanted: 0.1,
  scatter: null,
};

/** The two stones as they were planned, T-2 and T-3; of T-2 there are photographs as well. */
export function plannedTestStones(): readonly [TestStoneDraft, TestStoneDraft] {
  const layout = trialLayout(wish);
  if (!layout.ok) throw new Error(layout.error.message);
  const [second, third] = stonesOfTrial(wish, layout.value).map(
    (stone, index): TestStoneDraft => ({
      ...stone,
      name: `T-${index + 2}`,
      stoneId: null,
      workId: null,
      drawnOn: index === 0 ? '2025-10-14' : null,
      grid: null,
      drawn: null,
      ruler: null,
      prints: [],
      judgedBy: null,
      note:
        index === 0
          ? 'Planned after T-1: three etches in strips, four media in each, places drawn by lot. Drawn by the apprentice, etched by the printer.'
          : 'The same test on another stone, places drawn by lot anew. Not drawn yet.',
    }),
  );
  return [second!, third!];
}
