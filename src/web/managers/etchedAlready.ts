import type { WorkStage } from '../../records/work.ts';
import { lineCourse } from '../../studio/bench/lineCourse.ts';
import { lineRule } from '../../studio/bench/lineStages.ts';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';

const beforeEtch: readonly WorkStage[] = ['grained', 'drawn', 'regrained'];

/** What comes next on a stone that has its first etch behind it, in words; null where that etch is still to come. */
export function etchedAlready(stage: WorkStage): { readonly next: string; readonly headline: string } | null {
  if (beforeEtch.includes(stage)) return null;
  const { next } = lineCourse([], stage);
  if (next === null)
    return { next: say('nothing is left in the line'), headline: say('Etched; nothing is left in the line') };
  const name = told(lineRule(next).name);
  return { next: name, headline: say('Etched; next: {next}', { next: name }) };
}
