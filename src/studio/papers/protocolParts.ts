import type { RunState } from '../../records/bench.ts';
import type { Change } from '../../records/comparison.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import type { PlannedPart, PlannedZone } from '../../records/etch.ts';
import type { KeptAt } from '../../records/keptAt.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type {
  ProtocolComparison,
  ProtocolContact,
  ProtocolEtch,
  ProtocolMaterial,
  ProtocolStage,
} from '../../records/workProtocol.ts';
import { areaDoubts, filmDoubtMl } from '../etch/areaDoubt.ts';
import { mediumOf } from '../etch/mediumCatalogue.ts';
import type { FigureSources } from './figureSources.ts';

/** 100 × ml ÷ cm², to a hundredth; null where there is no area. */
export function per100Cm2(ml: number, areaCm2: number): number | null {
  return areaCm2 > 0 ? Math.round((1e4 * ml) / areaCm2) / 100 : null;
}

function hundredth(value: number | null): number | null {
  return value === null ? null : Math.round(value * 100) / 100;
}

/** The materials of a plan, with what is stated of a tannic solution. */
export function protocolMaterials(kept: KeptPlan, sources: FigureSources): ProtocolMaterial[] {
  const { tannic } = kept.request;
  return kept.plan.batches.map((need, index) => {
    const at = `materials.${index}`;
    const plan = (field: string): KeptAt => ({ record: 'plan', id: kept.id, field });
    for (const field of ['ml', 'drops', 'grams'] as const)
      sources.kept(`${at}.${field}`, 'plan', kept.id, `plan.batches.${index}.${field}`);
    const takers = kept.plan.zones.flatMap(({ id }, zone) => (need.zones.includes(id) ? [zone] : []));
    sources.worked(`${at}.mlPer100Cm2`, '100 × first ÷ sum of the others', [
      plan(`plan.batches.${index}.ml`),
      ...takers.map((zone) => plan(`plan.zones.${zone}.areaCm2`)),
    ]);
    const solution = need.material === 'tannic solution' ? tannic : null;
    for (const field of ['gramsPerLitre', 'pH'] as const)
      sources.kept(`${at}.${field}`, 'plan', kept.id, `request.tannic.${field}`);
    return {
      name: need.material,
      ml: need.ml,
      drops: need.drops ?? null,
      grams: need.grams,
      mlPer100Cm2: per100Cm2(
        need.ml,
        takers.reduce((sum, zone) => sum + kept.plan.zones[zone]!.areaCm2, 0),
      ),
      gramsPerLitre: solution?.gramsPerLitre ?? null,
      pH: solution?.pH ?? null,
      gum: solution?.gum ?? null,
    };
  });
}

/** What was laid where, beside what the runs' logs tell of it. */
export function protocolEtches(
  kept: KeptPlan,
  runs: readonly RunState[],
  sources: FigureSources,
): ProtocolEtch[] {
  const laid = kept.plan.zones.flatMap((zone, index) =>
    zone.parts.length === 0
      ? [{ zone, row: zone as PlannedZone | PlannedPart, field: `plan.zones.${index}` }]
      : zone.parts.map((row, part) => ({ zone, row, field: `plan.zones.${index}.parts.${part}` })),
  );
  const doubts = areaDoubts(kept.request);
  return laid.map(({ zone, row, field }, index) => {
    const at = `etches.${index}`;
    const areaPlusMinusCm2 = hundredth(doubts.get(row.id) ?? null);
    for (const doubt of ['areaPlusMinusCm2', 'mlPlusMinus'])
      sources.worked(`${at}.${doubt}`, 'from drawn corners and sides', [
        { record: 'plan', id: kept.id, field: 'request' },
        { record: 'plan', id: kept.id, field: `${field}.id` },
      ]);
    const drawn = kept.request.zones.find(({ id }) => id === zone.id);
    for (const [to, from] of [
      ['areaCm2', 'areaCm2'],
      ['plannedSeconds', 'contactSeconds'],
      ['moveWithinSeconds', 'longestGapSeconds'],
      ['layFrom', 'layFrom'],
    ] as const)
      sources.kept(`${at}.${to}`, 'plan', kept.id, `${field}.${from}`);
    const parts = (row.etch?.parts ?? []).map(({ material, ml, drops }, part) => {
      const from = `${field}.etch.parts.${part}`;
      sources.kept(`${at}.parts.${part}`, 'plan', kept.id, from);
      sources.worked(`${at}.parts.${part}.mlPer100Cm2`, '100 × first ÷ sum of the others', [
        { record: 'plan', id: kept.id, field: `${from}.ml` },
        { record: 'plan', id: kept.id, field: `${field}.areaCm2` },
      ]);
      return { material, ml, drops: drops ?? null, mlPer100Cm2: per100Cm2(ml, row.areaCm2) };
    });
    return {
      letter: row.letter,
      name: 'name' in row ? row.name : `${zone.name}, ${row.strength}`,
      medium: drawn?.medium ?? null,
      mediumName: drawn ? (mediumOf(drawn.medium, kept.request.ownMedia)?.name ?? drawn.medium) : null,
      strength: row.strength,
      etch: row.etch?.name ?? null,
      areaCm2: row.areaCm2,
      areaPlusMinusCm2,
      mlPlusMinus: hundredth(filmDoubtMl(doubts.get(row.id), kept.request.filmMm)),
      parts,
      plannedSeconds: row.contactSeconds,
      moveWithinSeconds: row.longestGapSeconds,
      layFrom: row.layFrom,
      basis: row.basis,
      done: contactsOn(row.id, runs, `${at}.done`, sources),
    };
  });
}

function contactsOn(
  place: string,
  runs: readonly RunState[],
  at: string,
  sources: FigureSources,
): ProtocolContact[] {
  const found = runs.flatMap(({ id, contacts }) =>
    contacts.flatMap((contact, index) =>
      contact.place === place ? [{ id, contact, field: `contacts.${index}` }] : [],
    ),
  );
  return found.map(({ id, contact, field }, index) => {
    sources.kept(`${at}.${index}`, 'run', id, field);
    const { stage, laidAt, spent, differenceSeconds, longestGapSeconds } = contact;
    return { stage, laidAt, spent, differenceSeconds, longestGapSeconds };
  });
}

/** The stages of all runs, in order. */
export function protocolStages(runs: readonly RunState[], sources: FigureSources): ProtocolStage[] {
  const found = runs.flatMap(({ id, stages }) => stages.map((stage, index) => ({ id, stage, index })));
  return found.map(({ id, stage: done, index }, at) => {
    sources.kept(`stages.${at}`, 'run', id, `stages.${index}`);
    const { stage, name, state, startedAt, expected, spent, differenceSeconds } = done;
    return { stage, name, state, startedAt, expected, spent, differenceSeconds };
  });
}

/** What a measured comparison found, zone by zone. */
export function protocolComparison(
  { id, title, finding, record }: ComparisonEntry,
  at: string,
  sources: FigureSources,
): ProtocolComparison {
  const zones = record?.zones ?? [];
  const changes = [...new Set(zones.map(({ change }) => change))];
  sources.kept(`${at}.zones`, 'comparison', id, 'record.zones');
  sources.kept(`${at}.finding`, 'comparison', id, 'finding');
  for (const index of (record?.warnings ?? []).keys())
    sources.kept(`${at}.warnings.${index}`, 'comparison', id, `record.warnings.${index}.message`);
  return {
    title,
    finding,
    zones: zones.map(({ name, medium, drawn, printed, change }) => ({
      name,
      medium,
      drawn: drawn && interval(drawn),
      printed: printed && interval(printed),
      change,
    })),
    counts: changes.map((change, index) => {
      const counted = zones.flatMap((zone, zoneAt) => (zone.change === change ? [zoneAt] : []));
      sources.worked(
        `${at}.counts.${index}.zones`,
        'count',
        counted.map((zone) => ({ record: 'comparison', id, field: `record.zones.${zone}.change` })),
      );
      return { change: change satisfies Change, zones: counted.length };
    }),
    warnings: (record?.warnings ?? []).map(({ message }) => message),
  };
}

function interval({ coverage, low, high }: { coverage: number; low: number; high: number }) {
  return { coverage, low, high };
}
