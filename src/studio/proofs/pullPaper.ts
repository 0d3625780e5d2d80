import type { Pull } from '../../records/pull.ts';

/**
 * What a pull's paper is called, without how it was printed: a paper of the kit says that at its end, and the pull says it
 * by itself.
 */
export function pullPaper({ paper, damp }: Pick<Pull, 'paper' | 'damp'>): string {
  return damp === null ? paper.words : paper.words.replace(damp ? /, damp$/ : /, dry$/, '');
}
