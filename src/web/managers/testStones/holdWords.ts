import type { Hold, PatchFinding } from '../../../records/patchReading.ts';
import type { PatchIntention } from '../../../records/testStone.ts';
import { say } from '../../words/say.ts';

export const holdWords: Record<Hold, string> = {
  lost: say('lost'),
  weak: say('weak'),
  held: say('held'),
  filled: say('filled in'),
};

/** One letter for the picture, so that nothing hangs on a tone of grey alone. */
export const holdLetters: Record<Hold, string> = { lost: 'L', weak: 'W', held: 'H', filled: 'F' };

export const intentionWords: Record<PatchIntention, string> = {
  image: say('image: meant to print'),
  control: say('control: treated as always'),
  guide: say('guide line: may vanish'),
  'stop-out': say('stop-out: stays bare'),
};

const markWords = {
  vanished: say('guide line, vanished'),
  shows: say('guide line, shows'),
  bare: say('stop-out, bare'),
  printed: say('stop-out, printed'),
} as const;

/** What became of a patch, with what else its intervals leave possible. */
export function findingWords({ hold, holdBy, camera }: PatchFinding): string {
  if (camera.mark !== null) return markWords[camera.mark];
  if (hold === null) return holdBy === 'hand' ? say('not to be read') : say('not read');
  if (holdBy === 'hand' || camera.least === camera.most) return holdWords[hold];
  const others = [camera.least!, camera.most!].filter((other) => other !== hold);
  const [one, two] = [...new Set(others)].map((other) => holdWords[other]);
  return two === undefined
    ? say('{hold}, perhaps {one}', { hold: holdWords[hold], one })
    : say('{hold}, perhaps {one} or {two}', { hold: holdWords[hold], one, two });
}

/** The letter that stands on a patch in the picture. */
export function findingLetter({ hold, holdBy, camera }: PatchFinding): string {
  if (camera.mark !== null) return camera.mark === 'printed' ? 'P' : '–';
  if (hold === null) return '?';
  return holdLetters[hold] + (holdBy === 'camera' && camera.least !== camera.most ? '?' : '');
}

/** The headline's count, such as "31 of 48 patches held". */
export function holdHeadline(findings: readonly PatchFinding[]): string {
  const judged = findings.filter(({ hold }) => hold !== null);
  const held = judged.filter(({ hold }) => hold === 'held').length;
  if (judged.length === 0) return say('No patch could be judged');
  return say('{held} of {count} patches held', { held, count: judged.length });
}

/** A coverage with half its 95 % interval in per cent, such as "34 ± 2". */
export function percentWords(
  read: { readonly coverage: number; readonly low: number; readonly high: number } | null,
): string {
  if (read === null) return say('not read');
  const half = Math.max(1, Math.round(((read.high - read.low) / 2) * 100));
  return `${Math.round(read.coverage * 100)} ± ${half} %`;
}
