import type { Pull, PullAge, PullPhotograph } from '../../records/pull.ts';

/**
 * How old a print was when it was photographed: as typed, else from the two times.
 * @returns null where neither is known, or the photograph is said to be older than the pull.
 */
export function pullAge(
  { madeAt }: Pick<Pull, 'madeAt'>,
  { ageMinutes, takenAt }: Pick<PullPhotograph, 'ageMinutes' | 'takenAt'>,
): PullAge | null {
  if (ageMinutes !== null) return { minutes: ageMinutes, basis: 'typed' };
  if (madeAt === null || takenAt === null) return null;
  const minutes = (Date.parse(takenAt) - Date.parse(madeAt)) / 60_000;
  return minutes < 0 ? null : { minutes: Math.round(minutes * 10) / 10, basis: 'from the times' };
}
