import type { RunState } from '../../records/bench.ts';
import type { KeptAt } from '../../records/keptAt.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { ProtocolPoured } from '../../records/workProtocol.ts';
import { pouredLines } from '../bench/pouredLines.ts';
import type { FigureSources } from './figureSources.ts';
import { per100Cm2 } from './protocolParts.ts';

/**
 * What was poured or used over all runs, beside what the plan asked for: on 100 cm² of the places that take it where
 * the first etch's plan says which, else of the whole stone.
 */
export function protocolPoured(
  stone: Pick<KeptStone, 'id' | 'widthMm' | 'heightMm'>,
  kept: KeptPlan | null,
  runs: readonly RunState[],
  sources: FigureSources,
): ProtocolPoured[] {
  const all = runs.flatMap(({ id, poured }) => poured.map((one, index) => ({ ...one, id, index })));
  return pouredLines(all, kept?.plan ?? null).map((line, index) => {
    const at = `poured.${index}`;
    const need = kept?.plan.batches.findIndex(({ material }) => material === line.material) ?? -1;
    const planned = line.stage === 'first-etch' && need >= 0;
    if (planned) sources.kept(`${at}.plannedMl`, 'plan', kept!.id, `plan.batches.${need}.ml`);
    const zones = planned
      ? kept!.plan.zones.flatMap((zone, zoneAt) =>
          kept!.plan.batches[need]!.zones.includes(zone.id) ? [{ zone, zoneAt }] : [],
        )
      : [];
    const areaCm2 = planned
      ? zones.reduce((sum, { zone }) => sum + zone.areaCm2, 0)
      : (stone.widthMm * stone.heightMm) / 100;
    const areas: KeptAt[] = planned
      ? zones.map(({ zoneAt }) => ({ record: 'plan', id: kept!.id, field: `plan.zones.${zoneAt}.areaCm2` }))
      : (['widthMm', 'heightMm'] as const).map((field) => ({ record: 'stone', id: stone.id, field }));
    const amounts = line.amounts.map((amount, unitAt) => {
      const told = line.logged.map((each) => all[each]!).filter((one) => one.amount?.unit === amount.unit);
      const from = (field: 'value' | 'low' | 'high') =>
        told.map(
          ({ id, index: place }): KeptAt => ({ record: 'run', id, field: `poured.${place}.amount.${field}` }),
        );
      for (const field of ['value', 'low', 'high'] as const)
        sources.worked(`${at}.amounts.${unitAt}.${field}`, 'sum', from(field));
      sources.worked(`${at}.amounts.${unitAt}.per100Cm2`, '100 × poured ÷ areas', [
        ...from('value'),
        ...areas,
      ]);
      return { ...amount, per100Cm2: per100Cm2(amount.value, areaCm2) };
    });
    return {
      stage: line.stage,
      material: line.material,
      plannedMl: line.plannedMl,
      amounts,
      alsoUnmeasured: line.alsoUnmeasured,
    };
  });
}
