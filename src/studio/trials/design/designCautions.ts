import type { TrialDesign } from '../../../records/trialDesign.ts';

/** Findings that say what a design's own warnings don't. */
const toldByAudit: ReadonlySet<string> = new Set([
  'place',
  'place-leans',
  'block-apart',
  'never-apart',
  'cells-missing',
]);

/** What is to be minded with a design, in sentences, each said once. */
export function designCautions({ warnings, audit = [] }: TrialDesign): string[] {
  return [...warnings, ...audit.filter(({ code }) => toldByAudit.has(code)).map(({ message }) => message)];
}
