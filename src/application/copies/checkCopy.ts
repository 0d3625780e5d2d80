import type { CopyCheck } from '../../records/copies.ts';
import { verifyBackup } from '../backup/verifyBackup.ts';

export interface CheckOrder {
  readonly file: string;
  /** When it is asked, ISO 8601. */
  readonly at: string;
}

/** Reads a copy back from end to end. What is amiss with it is part of the answer. */
export async function checkCopy({ file, at }: CheckOrder): Promise<CopyCheck> {
  const verified = await verifyBackup(file);
  if (!verified.ok) return { at, failure: verified.error, madeAt: null, photographs: null, concerns: [] };
  const { madeAt, parts, concerns } = verified.value;
  const photographs = parts.filter(({ name }) => name.startsWith('photographs/')).length;
  return { at, failure: null, madeAt, photographs, concerns: concerns.slice(0, 20) };
}
