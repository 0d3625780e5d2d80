import type { Hold, PatchFinding } from '../../../records/patchReading.ts';
import type { PatchIntention } from '../../../records/testStone.ts';

export const holdWords: Record<Hold, string> = {
  lost: 'lost',
  weak: 'weak',
  held: 'held',
  filled: 'filled in',
};

/** One letter for the picture, so that nothing hangs on a tone of grey alone. */
export const holdLetters: Record<Hold, string> = { lost: 'L', weak: 'W', held: 'H', filled: 'F' };

export const intentionWords: Record<PatchIntention, string> = {
  image: 'image: meant to print',
  control: 'control: treated as always',
  guide: 'guide line: may vanish',
  'stop-out': 'stop-out: stays bare',
};

const markWords = {
  vanished: 'guide line, vanished',
  shows: 'guide line, shows',
  bare: 'stop-out, bare',
  printed: 'stop-out, printed',
} as const;

/** What became of a patch, with what else its intervals leave possible. */
export function findingWords({ hold, holdBy, camera }: PatchFinding): string {
  if (camera.mark !== null) return markWords[camera.mark];
  if (hold === null) return holdBy === 'hand' ? 'not to be read' : 'not read';
  if (holdBy === 'hand' || camera.least === camera.most) return holdWords[hold];
  const others = [camera.least!, camera.most!].filter((other) => other !== hold);
  return `${holdWords[hold]}, perhaps ${[...new Set(others)].map((other) => holdWords[other]).join(' or ')}`;
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
  if (judged.length === 0) return 'No patch could be judged';
  return `${held} of ${judged.length} patches held`;
}

/** A coverage with half its 95 % interval in per cent, such as "34 ± 2". */
export function percentWords(
  read: { readonly coverage: number; readonly low: number; readonly high: number } | null,
): string {
  if (read === null) return 'not read';
  const half = Math.max(1, Math.round(((read.high - read.low) / 2) * 100));
  return `${Math.round(read.coverage * 100)} ± ${half} %`;
}
