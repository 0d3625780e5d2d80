import { failure } from '../../../foundation/failure.ts';
import { fail, ok, type Result } from '../../../foundation/result.ts';
import { suggestCorners } from '../../../imaging/matching/suggestCorners.ts';
import type { ComparisonRecord } from '../../../records/comparison.ts';
import type { MeasuringStage } from '../../../records/comparisonEntry.ts';
import { checkedPhotographs } from '../../comparison/checkedPhotographs.ts';
import { refusedRecord } from '../../comparison/comparisonRecord.ts';
import type { MeasuredComparison, MeasureInput, MeasuringHooks } from '../../comparison/measureInput.ts';
import type { KeptParts } from './keptParts.ts';
import { patchRecord } from './patchRecord.ts';
import { placePrint } from './placePrint.ts';
import { readPatchSide } from './readPatchSide.ts';
import { readStoneOnce } from './readStoneOnce.ts';

/** Where each stage begins, as a share of the whole: measured on 12-megapixel pairs. */
const begins = { reading: 0, matching: 0.06, tones: 0.55, sheets: 0.95 } as const;

/**
 * Reads the patches of a test stone off its photograph and a print's, and nothing else: no maps of change, no curves, no
 * evidence of faults, no sheet. Heavy: meant for a thread.
 * @returns a refused pair (wrong way round, no match) as a record too; failures of input, and `stopped`.
 */
export async function measurePatches(
  input: MeasureInput,
  parts: KeptParts,
  hooks: MeasuringHooks,
): Promise<Result<MeasuredComparison>> {
  const tell = (stage: MeasuringStage & keyof typeof begins, fraction: number = begins[stage]) =>
    hooks.progress({ stage, fraction });
  tell('reading');
  const read = await checkedPhotographs(input, hooks);
  if (!read.ok) return read;
  const photos = read.value;
  tell('matching');
  const corners = input.stone.corners ?? suggestCorners(photos.stone, input.sizeMm)?.corners ?? null;
  const stone = corners && (await readStoneOnce(input, photos, corners, parts));
  try {
    const placed = await placePrint(input, photos, corners, parts, {
      progress: (share) => tell('matching', begins.matching + share * (begins.tones - begins.matching)),
      stopped: hooks.stopped,
    });
    if (!placed.ok) return placed;
    if (placed.value.verdict !== 'ok') return ok(withRecord(refusedRecord(input, placed.value), []));
    if (hooks.stopped()) return fail(failure('stopped'));
    tell('tones');
    const { proofMap: map, covered, errorMm } = placed.value;
    const print = await readPatchSide({
      side: {
        side: 'proof',
        photo: photos.proof,
        map,
        flat: photos.flats.proof,
        chips: input.chips.filter(({ photo }) => photo === 'proof'),
        zones: input.zones,
        sizeMm: input.sizeMm,
        covered,
      },
      repeat: photos.repeats.proof,
      errorMm,
    });
    tell('sheets');
    // it was laid onto the stone, so the stone's corners are there
    const drawn = await stone!.done();
    if (hooks.stopped()) return fail(failure('stopped'));
    const record = patchRecord(input, placed.value, drawn.tones, print.tones);
    hooks.progress({ stage: 'sheets', fraction: 1 });
    return ok(
      withRecord(record, [
        ['stone.jpg', drawn.picture],
        ['proof.jpg', print.picture],
      ]),
    );
  } finally {
    stone?.stop();
  }
}

function withRecord(
  record: ComparisonRecord,
  pictures: readonly (readonly [string, Uint8Array])[],
): MeasuredComparison {
  const text = new TextEncoder().encode(`${JSON.stringify(record, null, 1)}\n`);
  return { record, files: new Map([['comparison.json', text], ...pictures]) };
}
