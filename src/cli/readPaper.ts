import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { type Paper, papers } from '../records/paper.ts';

/** The size of the sheets that is asked for with `--paper`; A4 where none is. */
export function readPaper(given: string | undefined): Result<Paper> {
  const paper = papers.find((candidate) => candidate === (given ?? 'a4'));
  if (paper) return ok(paper);
  const why = `${given} is none of ${papers.join(', ')}`;
  return fail(failure('argument-malformed', { name: '--paper', why, example: '--paper a4' }));
}
