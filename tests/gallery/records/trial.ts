import type { TrialDesign } from '../../../src/records/trialDesign.ts';
import { designTrial } from '../../../src/studio/trials/design/designTrial.ts';

/** One test stone of the invented studio: three etches by strips, five media by patches. */
export const etchesByMedium: TrialDesign = (() => {
  const designed = designTrial({
    title: 'Which etch holds which medium',
    stone: { widthMm: 300, heightMm: 400 },
    stones: 1,
    whole: { name: 'etch', levels: ['None', 'gum', 'tannic'] },
    sub: { name: 'medium', levels: ['crayon 00', 'crayon 3', 'tusche wash', 'pen line', 'solid'] },
    patchRepeats: 2,
    stripRepeats: 1,
    control: 'None',
    patchMm: null,
    gutterMm: 6,
    stripGutterMm: 12,
    border: { sidesMm: 15, endsMm: 25 },
    seed: 7,
    wanted: null,
    scatter: null,
  });
  if (!designed.ok) throw new Error(designed.error.message);
  return designed.value.design;
})();
