import type { RunState } from '../../records/bench.ts';
import type { KeptPlan, KeptSecondEtch } from '../../records/keptPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { nothingLaid } from '../etch/plannedZone.ts';
import type { Aspect } from './aspectChanges.ts';

/** What may differ in the etch as it was planned: the table, the solution, and each zone's row. */
export function planAspects(plan: KeptPlan | null): readonly Aspect[] {
  const tannic = plan?.request.tannic ?? null;
  const planned = (aspect: string, rank: number, value: string | null): Aspect => ({
    aspect,
    name: aspect,
    rank,
    value,
    ...(plan === null && { caution: 'no plan was followed on one side' }),
  });
  const number = (value: number | null | undefined, unit: string) =>
    value === null || value === undefined ? null : `${value} ${unit}`.trim();
  const gum = tannic?.gum ?? null;
  return [
    planned('etch table', 1, plan && `${plan.table.name}, issue ${plan.table.version}`),
    planned('tannic solution', 2, number(tannic?.gramsPerLitre, 'g/l')),
    planned('pH of the tannic solution', 2, number(tannic?.pH, '')),
    planned('gum in the tannic solution', 2, gum === null ? null : gum ? 'with gum' : 'without gum'),
    planned('depth of the etch', 3, number(plan?.request.filmMm, 'mm')),
    planned('people', 5, number(plan?.request.people, '')),
    ...(plan?.plan.zones ?? []).map((zone) => ({
      ...planned(`etch of ${zone.name}`, 1, rowWords(zone)),
      listed: { list: 'plan', absent: 'not in the plan' },
    })),
  ];
}

function rowWords({ etch, parts, basis }: KeptPlan['plan']['zones'][number]): string {
  if (etch === null) return basis === nothingLaid ? nothingLaid : 'no rule here';
  return parts.length > 0 ? parts.map((part) => part.etch.name).join(' and ') : etch.name;
}

const secondEtches: readonly LineStage[] = ['second-etch', 'second-etch-quick'];

/**
 * What may differ in the second etch as it was planned, where the run had one.
 * @param plans of the run's work, newest first; the one that was made last before the etch began is taken for its own
 */
export function secondEtchAspects(
  { stages }: Pick<RunState, 'stages'>,
  plans: readonly KeptSecondEtch[],
): readonly Aspect[] {
  const etched = stages.findLast(({ stage, state }) => secondEtches.includes(stage) && state !== 'skipped');
  const begun = etched?.startedAt ?? etched?.endedAt ?? null;
  if (begun === null) return [];
  const kept = plans.find(({ createdAt }) => Date.parse(createdAt) <= Date.parse(begun)) ?? null;
  const listed = { list: 'second etch', absent: 'not in the plan' };
  return [
    { aspect: 'second etch line', name: 'line of the second etch', value: kept?.plan.line ?? null, rank: 3 },
    ...(kept?.plan.zones ?? []).map(
      ({ name, etch }): Aspect => ({
        aspect: `second etch of ${name}`,
        name: `second etch of ${name}`,
        value: etch ?? 'none',
        rank: 2,
        listed,
      }),
    ),
    ...(kept?.zones ?? []).map(
      ({ name, reading }): Aspect => ({
        aspect: `reading of ${name}`,
        name: `how ${name} had come up`,
        value: reading === 'not read' ? null : reading,
        rank: 4,
      }),
    ),
  ];
}
