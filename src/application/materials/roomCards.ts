import type { Result } from '../../foundation/result.ts';
import type { RoomCardInput } from '../../paper/sheets/roomCards.ts';
import type { Material } from '../../records/material.ts';
import type { Paper } from '../../records/paper.ts';
import type { LineStage } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { lineRule } from '../../studio/bench/lineStages.ts';
import { cautionsDefer, stageCautions } from '../../studio/bench/stageCautions.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'materials'>;
  readonly now: () => Date;
}

/** The card at the door: every material in use. */
export async function doorCard(parts: Parts, paper: Paper): Promise<Result<Uint8Array>> {
  return setCard({ card: 'door', materials: await inUse(parts), at: parts.now().toISOString(), paper });
}

/** The card beside the stone: what to mind in a stage, and the materials used in it. */
export async function startCard(parts: Parts, stage: LineStage, paper: Paper): Promise<Result<Uint8Array>> {
  const materials = (await inUse(parts)).filter(({ stages }) => stages.includes(stage));
  return setCard({
    card: 'start',
    stage: lineRule(stage).name,
    cautions: stageCautions(stage),
    defer: cautionsDefer,
    materials,
    at: parts.now().toISOString(),
    paper,
  });
}

async function inUse({ store }: Parts): Promise<readonly Material[]> {
  const listed = await store.materials.list({ search: '', putBy: 'no', after: null, limit: 200 });
  return (listed?.page ?? []).toSorted((one, other) => one.name.localeCompare(other.name, 'en'));
}

function setCard(input: RoomCardInput): Promise<Result<Uint8Array>> {
  return setSheet(threadModule(import.meta.url, 'roomCardThread'), input);
}
