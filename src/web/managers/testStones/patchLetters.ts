import { patchMark } from '../../../paper/charts/patchMark.ts';
import type { PatchFinding } from '../../../records/patchReading.ts';
import type { PatchIntention, StonePatch } from '../../../records/testStone.ts';
import { patchName } from '../../../studio/trials/places/patchName.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

const letters: Readonly<Record<PatchIntention, string>> = {
  image: '',
  control: 'C',
  guide: 'G',
  'stop-out': 'S',
};

type Placed = Pick<StonePatch, 'id' | 'row' | 'column'>;

/** What stands on a patch beside its mark: a letter where it is not simply meant to print, and its name where it has no mark. */
export function patchLetter(patch: Placed & Pick<StonePatch, 'intention'>): string {
  const name = patchMark(patch) === null ? patch.id : '';
  return `${name} ${letters[patch.intention]}`.trim();
}

/** What a patch is called. */
export function patchWords(patch: Placed): string {
  return told(patchName(patch));
}

/** What a patch that was read is called. */
export function findingName({ patch, row, column }: Pick<PatchFinding, 'patch' | 'row' | 'column'>): string {
  return patchWords({ id: patch, row, column });
}

/** The small line over a page of patches, such as “T-1, 24 patches”. */
export function patchesStamp(stone: string, patches: number): string {
  return say('{patches, plural, one {{stone}, one patch} other {{stone}, {patches} patches}}', {
    patches,
    stone,
  });
}
