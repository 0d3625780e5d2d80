import type { PatchIntention, StonePatch } from '../../../records/testStone.ts';
import { say } from '../../words/say.ts';

const letters: Readonly<Record<PatchIntention, string>> = {
  image: '',
  control: 'C',
  guide: 'G',
  'stop-out': 'S',
};

/** What stands on a patch: what it goes by, and a letter where it is not simply meant to print. */
export function patchLetter({ id, intention }: Pick<StonePatch, 'id' | 'intention'>): string {
  return `${id} ${letters[intention]}`.trim();
}

/** The small line over a page of patches, such as “T-1, 24 patches”. */
export function patchesStamp(stone: string, patches: number): string {
  return say('{patches, plural, one {{stone}, one patch} other {{stone}, {patches} patches}}', {
    patches,
    stone,
  });
}
