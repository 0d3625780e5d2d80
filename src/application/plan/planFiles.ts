import { etchMapPdf } from '../../paper/sheets/etchMapSheet.ts';
import { stepSheetPdf } from '../../paper/sheets/stepSheet.ts';
import type { EtchPlan, PlanRequest } from '../../records/etch.ts';
import type { Paper } from '../../records/paper.ts';
import { dateWords } from '../dateWords.ts';

/** The names of a plan's files: the plan itself, its map at true size, its step sheet. */
export const planFileNames = ['plan.json', 'map.pdf', 'steps.pdf'] as const;

/** The two that are made for a paper. */
export type PlanSheetName = Exclude<(typeof planFileNames)[number], 'plan.json'>;

export interface PlanPapers {
  readonly plan: EtchPlan;
  /** What the plan was made from. */
  readonly request: PlanRequest;
  /** The work and its stone, as people call them. */
  readonly title: string;
  readonly paper: Paper;
  readonly plannedAt: Date;
}

/** A plan on paper: plan.json, map.pdf and steps.pdf by name. The same input gives the same bytes. */
export async function planFiles(papers: PlanPapers): Promise<Map<string, Uint8Array>> {
  const text = new TextEncoder().encode(`${JSON.stringify(papers.plan, null, 1)}\n`);
  return new Map([
    ['plan.json', text],
    ['map.pdf', await planSheet('map.pdf', papers)],
    ['steps.pdf', await planSheet('steps.pdf', papers)],
  ] satisfies [(typeof planFileNames)[number], Uint8Array][]);
}

/** One of a plan's two sheets as a PDF. */
export function planSheet(name: PlanSheetName, papers: PlanPapers): Promise<Uint8Array> {
  const { plannedAt, ...rest } = papers;
  switch (name) {
    case 'map.pdf':
      return etchMapPdf({ ...rest, createdAt: plannedAt });
    case 'steps.pdf':
      return stepSheetPdf({ ...rest, createdAt: plannedAt, dateText: dateWords(plannedAt) });
    default:
      return name satisfies never;
  }
}
