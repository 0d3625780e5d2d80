import { argumentFailures } from './failures/argumentFailures.ts';
import { backupFailures } from './failures/backupFailures.ts';
import { craftFailures } from './failures/craftFailures.ts';
import { dayFailures } from './failures/dayFailures.ts';
import { deviceFailures } from './failures/deviceFailures.ts';
import { editionFailures } from './failures/editionFailures.ts';
import { paperFailures } from './failures/paperFailures.ts';
import { pictureFailures } from './failures/pictureFailures.ts';
import { proofFailures } from './failures/proofFailures.ts';
import { recordFailures } from './failures/recordFailures.ts';
import { servingFailures } from './failures/servingFailures.ts';
import { testStoneFailures } from './failures/testStoneFailures.ts';
import { uploadFailures } from './failures/uploadFailures.ts';

/**
 * The one registry of modelled failures: code, sentence, what to do.
 * HTTP status lives in `server`, exit status in `cli`, each as an exhaustive record over these codes.
 */
export const failureRegistry = {
  ...argumentFailures,
  ...pictureFailures,
  ...recordFailures,
  ...servingFailures,
  ...testStoneFailures,
  ...craftFailures,
  ...proofFailures,
  ...dayFailures,
  ...editionFailures,
  ...backupFailures,
  ...paperFailures,
  ...deviceFailures,
  ...uploadFailures,
} as const;

export type FailureCode = keyof typeof failureRegistry;
