import type { KeptSecondEtch } from '../../records/keptPlan.ts';
import { type WorkProtocol, workProtocolSchemaName } from '../../records/workProtocol.ts';
import { type FigureSources, figureSources } from './figureSources.ts';
import { gapsOf, type WorkRecords } from './gaps.ts';
import { protocolComparison, protocolEtches, protocolMaterials, protocolStages } from './protocolParts.ts';
import { protocolPoured } from './protocolPoured.ts';
import { secondEtchesInForce } from './secondEtchesInForce.ts';

export interface ProtocolInput extends WorkRecords {
  /** Oldest first. */
  readonly secondEtches: readonly KeptSecondEtch[];
  readonly engine: string;
  /** ISO 8601. */
  readonly madeAt: string;
}

/** Facts of a run's log that say that something went otherwise than planned. */
const deviating: ReadonlySet<string> = new Set([
  'gap-too-long',
  'contact-short',
  'contact-long',
  'not-laid',
  'not-in-plan',
  'trouble',
]);

/** A work's protocol for another studio, from its records and nothing else. */
export function workProtocolOf(input: ProtocolInput): WorkProtocol {
  const { work, plan, runs, comparisons, series } = input;
  const sources = figureSources();
  const { stone, origin } = work;
  sources.kept('workVersion', 'work', work.id, 'version');
  for (const side of ['widthMm', 'heightMm'] as const) sources.kept(`stone.${side}`, 'stone', stone.id, side);
  if (plan !== null) {
    sources.kept('table.version', 'plan', plan.id, 'table.version');
    sources.kept('people', 'plan', plan.id, 'request.people');
    sources.kept('filmMm', 'plan', plan.id, 'request.filmMm');
  }
  const deviations = runs.flatMap(({ id, facts }) =>
    facts.flatMap(({ fact, words }, index) =>
      deviating.has(fact) ? [{ words, id, field: `facts.${index}.words` }] : [],
    ),
  );
  for (const [index, { id, field }] of deviations.entries())
    sources.kept(`deviations.${index}`, 'run', id, field);
  const measured = comparisons.filter(({ record }) => record?.verdict === 'ok');
  return {
    schema: workProtocolSchemaName,
    engine: input.engine,
    madeAt: input.madeAt,
    title: work.title,
    workId: work.id,
    workVersion: work.version,
    stone: {
      name: stone.name,
      widthMm: stone.widthMm,
      heightMm: stone.heightMm,
      colour: stone.colour,
    },
    origin: origin.kind,
    past: origin.kind === 'new' ? [] : origin.history,
    table: plan && { name: plan.table.name, version: plan.table.version },
    people: plan?.request.people ?? null,
    filmMm: plan?.request.filmMm ?? null,
    materials: plan ? protocolMaterials(plan, sources) : [],
    etches: plan ? protocolEtches(plan, runs, sources) : [],
    poured: protocolPoured(work.stone, plan, runs, sources),
    secondEtches: secondEtchesInForce(input.secondEtches, runs).map((second) => ({
      line: second.plan.line,
      zones: second.plan.zones.map(({ name, strength, etch, why }) => ({ name, strength, etch, why })),
    })),
    stages: protocolStages(runs, sources),
    picked: runs.at(-1)?.picked.map(({ tool, words }) => ({ tool, words })) ?? [],
    deviations: deviations.map(({ words }) => words),
    comparisons: measured.map((one, index) => protocolComparison(one, `comparisons.${index}`, sources)),
    series: protocolSeries(series, sources),
    notRecorded: gapsOf(input),
    sources: sources.all,
  };
}

function protocolSeries(series: WorkRecords['series'], sources: FigureSources): WorkProtocol['series'] {
  if (series.pulls.length === 0) return null;
  const { workId, answer, tolerance, sigma, pulls } = series;
  sources.kept('series.reason', 'series', workId, 'answer.reason');
  sources.kept('series.tolerance', 'series', workId, 'tolerance');
  sources.kept('series.sigma', 'series', workId, 'sigma');
  sources.worked(
    'series.pulls',
    'count',
    pulls.map((_, index) => ({ record: 'series', id: workId, field: `pulls.${index}` })),
  );
  return { state: answer.state, reason: answer.reason, tolerance, sigma, pulls: pulls.length };
}
