import { ok, type Result } from '../../foundation/result.ts';
import type { WorkProtocol } from '../../records/workProtocol.ts';
import { workProtocolOf } from '../../studio/papers/workProtocol.ts';
import { engineVersion } from '../engineVersion.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';
import { readWorkRecords, type WorkRecordParts } from './workRecords.ts';

/** A work's protocol for another studio; or `not-found`. */
export async function readWorkProtocol(
  parts: WorkRecordParts,
  workId: string,
): Promise<Result<WorkProtocol>> {
  const records = await readWorkRecords(parts, workId);
  if (!records.ok) return records;
  const secondEtches = (await parts.store.plans.listSecond(workId)).toReversed();
  const madeAt = parts.now().toISOString();
  return ok(workProtocolOf({ ...records.value, secondEtches, engine: engineVersion, madeAt }));
}

/** The same as a PDF; or `not-found`. */
export async function workProtocolSheet(parts: WorkRecordParts, workId: string): Promise<Result<Uint8Array>> {
  const protocol = await readWorkProtocol(parts, workId);
  return protocol.ok ? setProtocol(protocol.value) : protocol;
}

/** Sets a protocol, one's own or another studio's. */
export function setProtocol(protocol: WorkProtocol): Promise<Result<Uint8Array>> {
  return setSheet(threadModule(import.meta.url, 'workProtocolThread'), protocol);
}
