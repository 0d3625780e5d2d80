import { setTimeout as sleep } from 'node:timers/promises';
import { addPhotograph } from '../../../application/addPhotograph.ts';
import { comparisonSheets } from '../../../application/comparison/comparisonSheets.ts';
import { createComparison } from '../../../application/createComparison.ts';
import { engineVersion } from '../../../application/engineVersion.ts';
import { resultKey } from '../../../application/measuring/resultKey.ts';
import { keepReading } from '../../../application/placePulls.ts';
import { printJob, stoneJob } from '../../../application/pulls/pullJob.ts';
import { settingsOf } from '../../../application/pulls/seriesSettings.ts';
import { changeWork } from '../../../application/works/changeWork.ts';
import { measureZoneTones } from '../../../application/zoneTones/measureZoneTones.ts';
import type { ComparisonRequest } from '../../../records/comparisonEntry.ts';
import type { PullPhotograph } from '../../../records/pull.ts';
import type { WorkZone } from '../../../records/work.ts';
import { type KeptPrint, loadKeptPrint } from './keptPrints.ts';
import { must } from './must.ts';
import type { YearParts } from './yearClock.ts';
import { yearRectangle, zonesInRectangle } from './yearDrawing.ts';
import type { YearWork } from './yearWorks.ts';

/** Minutes after the pull at which a proof was photographed. */
const photographedAfterMinutes = 10;

/** A work of the year whose photographs are entered as it goes on. */
export interface PrintWriter {
  /** Photographs the drawn stone, attaches it and takes over the tones that were read from it. */
  drawn(): Promise<void>;
  /** The photograph of the last proof, for its pull. */
  proofPhotograph(): Promise<PullPhotograph>;
  /** Measures the last proof, once it was photographed, against the drawn stone. */
  compared(): Promise<void>;
}

/** Enters a work's photographs by the doors that people use; what was measured of them beforehand is not measured again. */
export async function printWriter(parts: YearParts, work: YearWork, workId: string): Promise<PrintWriter> {
  const kept = await loadKeptPrint(work.id);
  const current = kept.measured?.comparison.engine === engineVersion ? kept.measured : null;
  const { store } = parts;
  const photograph = async (of: 'stone' | 'print', bytes: Uint8Array) => {
    const fileName = `${work.id}-${of}.jpg`;
    return must(await addPhotograph(parts, { fileName, content: once(bytes) })).photograph.id;
  };
  const stone = await photograph('stone', kept.stoneBytes);
  let print = '';
  const place = async () => {
    const found = (await store.works.find(workId))!;
    return { found, settings: await settingsOf(store, found) };
  };
  return {
    async drawn() {
      const { found } = await place();
      const corners = { of: 'rectangle' as const, px: kept.stone };
      const attached = { photograph: stone, state: 'drawn' as const, takenAt: null, corners, note: '' };
      const rectangle = yearRectangle(work.zones);
      const photographs = [attached];
      must(await changeWork(parts, workId, { version: found.version, photographs, rectangle }));
      const zones = work.zones.map((zone) => ({ ...zone, tone: current?.tones[zone.id] ?? null }));
      const read = current ? zones : await tonesRead(parts, workId, stone, work.zones);
      must(await changeWork(parts, workId, { version: found.version + 1, zones: read }));
    },
    async proofPhotograph() {
      print = await photograph('print', kept.printBytes);
      const ageMinutes = photographedAfterMinutes;
      const shown = { photograph: print, takenAt: null, ageMinutes, corners: kept.print, chips: [] };
      const { found, settings } = await place();
      if (current) {
        const { stone: stoneTones, print: printTones } = current;
        const none = new Map<string, Uint8Array>();
        const stoneKeyed = await stoneJob(parts, found, settings, 'drawn');
        await keepReading(store, stoneKeyed, { record: stoneTones, files: none });
        const printKeyed = await printJob(parts, found, settings, shown);
        await keepReading(store, printKeyed, { record: printTones, files: none });
      }
      return shown;
    },
    async compared() {
      const request = requestOf(work, kept, stone, print);
      if (current) {
        const { comparison, files } = current;
        const pictures = { stone: files.get('stone.jpg')!, proof: files.get('proof.jpg')! };
        const overlay = files.get('overlay.png') ?? null;
        const words = `${work.id}-print.jpg against ${work.id}-stone.jpg`;
        const sheets = await comparisonSheets(comparison, words, parts.now(), { ...pictures, overlay });
        await store.resultFiles.keep(
          resultKey(request, engineVersion),
          comparison,
          new Map([...files, ...sheets]),
        );
      }
      const { id } = must(await createComparison({ ...parts, newId: () => `${workId}-measured` }, request));
      await measured(parts, id);
    },
  };
}

function requestOf(work: YearWork, kept: KeptPrint, stone: string, print: string): ComparisonRequest {
  const side = { repeat: null, flat: null };
  return {
    title: `${work.title}, last proof`,
    sizeMm: yearRectangle(work.zones).sizeMm,
    stone: { ...side, photograph: stone, corners: kept.stone },
    proof: { ...side, photograph: print, corners: kept.print },
    zones: zonesInRectangle(work.zones),
    chips: [],
  };
}

async function tonesRead(
  parts: YearParts,
  workId: string,
  photograph: string,
  zones: readonly WorkZone[],
): Promise<WorkZone[]> {
  const read = must(await measureZoneTones(parts, workId, { photograph, cornersPx: null, of: null }));
  return zones.map((zone) => ({
    ...zone,
    tone: read.zones.find((one) => one.zone === zone.id)?.tone ?? null,
  }));
}

/** Until a comparison was measured; one that was kept with the program is found at once. */
async function measured({ store, queue }: YearParts, id: string): Promise<void> {
  queue.wake();
  for (;;) {
    const { state, failure } = (await store.comparisons.find(id))!;
    if (state === 'measured') return;
    if (state !== 'waiting' && state !== 'measuring')
      throw new Error(`${id} is ${state}: ${failure?.message}`);
    await sleep(5);
  }
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
