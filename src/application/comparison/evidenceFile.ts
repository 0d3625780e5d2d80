import { pictureEvidence } from '../../imaging/evidence/pictureEvidence.ts';
import type { ToneResult } from '../../imaging/tone/measureTone.ts';
import { type EvidenceRecord, evidenceSchema } from '../../records/evidence.ts';
import type { Zone } from '../../records/zone.ts';
import { engineVersion } from '../engineVersion.ts';

/** evidence.json: what the maps show of faults; null where there are no maps. */
export function evidenceFile(tone: ToneResult, zones: readonly Zone[]): Uint8Array | null {
  const { drawn, printed } = tone;
  if (!drawn || !printed) return null;
  const evidence: EvidenceRecord = {
    schema: evidenceSchema,
    engine: engineVersion,
    ...pictureEvidence({
      drawn,
      printed,
      zones,
      measured: tone,
      travel: null,
      rollerDiameterMm: null,
      strength: null,
    }),
  };
  return new TextEncoder().encode(`${JSON.stringify(evidence)}\n`);
}
