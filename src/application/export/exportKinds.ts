import { benchKinds } from './benchKinds.ts';
import { comparisonKinds } from './comparisonKinds.ts';
import type { ExportKind } from './exportColumn.ts';
import { pullKinds } from './pullKinds.ts';
import { shelfKinds } from './shelfKinds.ts';
import { suspectKinds } from './suspectKinds.ts';
import { testStoneKinds } from './testStoneKinds.ts';
import { workKinds } from './workKinds.ts';

/** All that an export holds: the one source of the files and of what is documented about them. */
export const exportKinds: readonly ExportKind[] = [
  ...workKinds,
  ...benchKinds,
  ...pullKinds,
  ...comparisonKinds,
  ...suspectKinds,
  ...testStoneKinds,
  ...shelfKinds,
];
