import { basename, dirname, extname, resolve } from 'node:path';
import { planFileNames, planFiles } from '../application/plan/planFiles.ts';
import { planFromInput, startingTables } from '../application/plan/planFromInput.ts';
import { etchTableSchema } from '../contract/etchTable.ts';
import { fieldPath, issueReason } from '../contract/fieldPath.ts';
import { type PlanInput, planInputSchema } from '../contract/planInput.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { EtchPlan, EtchTable, PlanRequest } from '../records/etch.ts';
import { mediumCatalogue } from '../studio/etch/mediumCatalogue.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { checkFolder, writeFolder } from './outputFolder.ts';
import { readText } from './readInput.ts';
import { readPaper } from './readPaper.ts';
import { reportFailure } from './report.ts';

export const planOptions: OptionList = { out: 'plan', paper: 'a4', media: '' };

/** `stonetone plan`: plans the etch of a work and writes it with its map and step sheet, or prints the catalogue of media. */
export async function plan(words: readonly string[]): Promise<number> {
  const given = readArguments(words, planOptions, 1);
  if (!given.ok) return reportFailure(given.error);
  if (given.value.options.has('media')) {
    console.log(
      JSON.stringify(
        mediumCatalogue.map(({ id, name }) => ({ id, name })),
        null,
        1,
      ),
    );
    return exitDone;
  }
  const file = given.value.word;
  if (!file)
    return reportFailure(failure('argument-missing', { name: 'the work', example: 'such as work.json' }));
  const out = required(given.value, 'out', planOptions.out!);
  if (!out.ok) return reportFailure(out.error);
  const writable = await checkFolder(out.value);
  if (!writable.ok) return reportFailure(writable.error);
  const paper = readPaper(given.value.options.get('paper'));
  if (!paper.ok) return reportFailure(paper.error);
  const planned = await planOfFile(file);
  if (!planned.ok) return reportFailure(planned.error);
  const files = await planFiles({ ...planned.value, paper: paper.value, plannedAt: new Date() });
  const written = await writeFolder(out.value, files, planFileNames);
  if (!written.ok) return reportFailure(written.error);
  console.log(planSentence(planned.value.plan));
  console.log(`Written to ${out.value}.`);
  return exitDone;
}

interface PlannedFile {
  readonly plan: EtchPlan;
  readonly request: PlanRequest;
  readonly title: string;
}

/** The plan of a work's file, called by the work's own title, else by the file's name. */
async function planOfFile(file: string): Promise<Result<PlannedFile>> {
  const text = await readText(file);
  if (!text.ok) return text;
  const json = parsed(text.value);
  if (!json.ok) return fail(failure('plan-malformed', { why: `${file} is not JSON`, field: 'the file' }));
  const input = planInputSchema.safeParse(json.value);
  if (!input.success) {
    const path = fieldPath(input.error);
    return fail(
      failure('plan-malformed', { why: issueReason(input.error), field: path || 'the file' }, path),
    );
  }
  const { title = basename(file, extname(file)), ...work } = input.data;
  const table = await tableOf(work, dirname(file));
  if (!table.ok) return table;
  const request = { ...work, table: table.value };
  const plan = planFromInput(request);
  return plan.ok ? ok({ plan: plan.value, request, title }) : plan;
}

/** A table by name, by path beside the work, or as it stands in the work. */
async function tableOf({ table }: Pick<PlanInput, 'table'>, folder: string): Promise<Result<EtchTable>> {
  if (typeof table !== 'string') return ok(table);
  const named = startingTables.find((candidate) => candidate.id === table);
  if (named) return ok(named);
  const text = await readText(resolve(folder, table));
  if (!text.ok)
    return fail(
      failure(
        'table-malformed',
        { why: `${table} is neither a table's name nor a file`, field: 'table' },
        'table',
      ),
    );
  const json = parsed(text.value);
  if (!json.ok)
    return fail(failure('table-malformed', { why: `${table} is not JSON`, field: 'the file' }, 'table'));
  const read = etchTableSchema.safeParse(json.value);
  if (read.success) return ok(read.data);
  const path = fieldPath(read.error);
  return fail(failure('table-malformed', { why: issueReason(read.error), field: path || 'the file' }, path));
}

function parsed(text: string): Result<unknown, null> {
  try {
    return ok(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch {
    return fail(null);
  }
}

function planSentence({ schedule, totals }: EtchPlan): string {
  const amounts = totals.map((part) => `${part.ml} ml ${part.material}`).join(', ');
  switch (schedule.feasible) {
    case true:
      return `Can be kept, ends within ${schedule.skewSeconds} s of each other. ${amounts}.`;
    case false:
      return `Can't be kept: ${schedule.reason}. ${amounts}.`;
    case 'unknown':
      return `Not known whether it can be kept: ${schedule.reason}. ${amounts}.`;
    default:
      return schedule.feasible satisfies never;
  }
}
