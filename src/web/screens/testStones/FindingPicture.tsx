import type { PatchFinding } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { comparisonFile } from '../../client/comparisons.ts';
import { findingLetter, findingWords, percentWords } from '../../managers/testStones/holdWords.ts';
import { say } from '../../words/say.ts';

/** A finding as the picture shows it. */
export function shownFinding(finding: PatchFinding) {
  const { patch, row, column, polygonMm, hold } = finding;
  return {
    id: patch,
    row,
    column,
    polygonMm,
    letter: findingLetter(finding),
    words: say('{finding}, drawn {percent}, printed {percent2}', {
      finding: findingWords(finding),
      percent: percentWords(finding.camera.drawn),
      percent2: percentWords(finding.camera.printed),
    }),
    kind: hold ?? ('other' as const),
  };
}

/** The straightened print that a stone is judged by, lying as the stone does. */
export function PrintPicture({ stone, print }: { stone: TestStone; print: string | null }) {
  const comparison = stone.prints.find(({ id }) => id === print)?.comparisonId ?? null;
  return comparison && <img src={comparisonFile(comparison, 'proof.jpg', 1200)} alt="" />;
}
