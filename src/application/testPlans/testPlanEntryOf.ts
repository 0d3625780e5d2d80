import type { TestPlan } from '../../records/testPlan.ts';
import type { TestPlanEntry } from '../../records/testPlanEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { mediumName } from '../../studio/etch/mediumName.ts';
import { planTroubles, wishOfPlan } from '../../studio/trials/design/wishOfPlan.ts';
import { judgeLevels, type KnownLevels } from './judgeLevels.ts';

export type PlanRecords = Pick<KeptRecords, 'media' | 'etchTables'>;

/** A planned test with what follows from it. */
export async function testPlanEntryOf(records: PlanRecords, plan: TestPlan): Promise<TestPlanEntry> {
  return {
    ...plan,
    wish: wishOfPlan(withMediumNames(plan)),
    troubles: planTroubles(plan),
    levels: judgeLevels(plan, await knownLevels(records)),
  };
}

/** Media are laid out, listed and sealed by the names that people know them by. */
function withMediumNames(plan: TestPlan): TestPlan {
  const named = new Map(
    plan.treatments
      .filter(({ kind }) => kind === 'medium')
      .flatMap(({ levels }) => levels.map((level) => [level, mediumName(level)] as const)),
  );
  const treatments = plan.treatments.map((each) => ({
    ...each,
    levels: each.kind === 'medium' ? each.levels.map(mediumName) : each.levels,
  }));
  return { ...plan, treatments, control: plan.control && (named.get(plan.control) ?? plan.control) };
}

/** The studio's own media, and the newest version of every etch table. */
async function knownLevels({ media, etchTables }: PlanRecords): Promise<KnownLevels> {
  const ownMedia = (await media.list()).map(({ id, name, rule }) => ({ id, name, rule }));
  const tables = [];
  for (const { id } of await etchTables.list()) {
    const found = await etchTables.find(id);
    if (found) tables.push(found.table);
  }
  return { ownMedia, tables };
}
