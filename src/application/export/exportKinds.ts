import { benchKinds } from './benchKinds.ts';
import type { ExportKind } from './exportColumn.ts';
import { proofKinds } from './proofKinds.ts';
import { shelfKinds } from './shelfKinds.ts';
import { workKinds } from './workKinds.ts';

/** All that an export holds: the one source of the files and of what is documented about them. */
export const exportKinds: readonly ExportKind[] = [...workKinds, ...benchKinds, ...proofKinds, ...shelfKinds];
