import { readTestPhotographs } from '../src/application/testStones/readTestPhotographs.ts';
import { type Hold, holds } from '../src/records/patchReading.ts';
import { patchStone, patchStoneGrid } from '../src/sample/render/layouts/patchStone.ts';
import { layGrid } from '../src/studio/trials/reading/layGrid.ts';
import { holdAt } from '../src/studio/trials/reading/readHold.ts';
import { renderedBenchPair } from './benchPair.ts';

export interface TestStoneScore {
  readonly patches: number;
  /** Verdicts that are the rule's on the truth. */
  readonly right: number;
  /** Patches whose true verdict lies within what the intervals leave possible. */
  readonly within: number;
  readonly wrong: readonly string[];
  /** From two files to 48 findings with their pictures. */
  readonly seconds: number;
}

/** Renders a test stone with its print, reads both, and scores every patch against the truth. */
export async function readTestStoneCase(seed: number, megapixels: number): Promise<TestStoneScore> {
  const pair = patchStone(seed, megapixels);
  const { input, truth } = await renderedBenchPair(pair, 'usual');
  const media = new Map(pair.drawing.zones.map(({ id, medium }) => [id, medium]));
  const patches = layGrid(patchStoneGrid).map((patch) => ({
    ...patch,
    treatment: { medium: media.get(patch.id)! },
  }));
  const started = performance.now();
  const read = await readTestPhotographs(
    { ...input, ruler: null, patches, factors: [{ name: 'medium', givenTo: 'patch' }] },
    { progress: () => undefined, stopped: () => false },
  );
  const seconds = (performance.now() - started) / 1000;
  if (!read.ok) throw new Error(read.error.message);
  const score = { right: 0, within: 0, wrong: [] as string[] };
  for (const { patch, camera } of read.value.findings) {
    const zone = truth.zones.find(({ id }) => id === patch)!;
    const hold = holdAt(zone.drawn, zone.printed!);
    if (camera.hold === hold) score.right++;
    else
      score.wrong.push(
        `${patch}: ${camera.hold ?? camera.why}, is ${hold} (${zone.drawn.toFixed(3)} → ${zone.printed!.toFixed(3)}, read ${camera.drawn?.coverage.toFixed(3)} → ${camera.printed?.coverage.toFixed(3)})`,
      );
    if (camera.least !== null && between(hold, camera.least, camera.most!)) score.within++;
  }
  return { patches: read.value.findings.length, seconds, ...score };
}

function between(hold: Hold, least: Hold, most: Hold): boolean {
  const at = holds.indexOf(hold);
  return holds.indexOf(least) <= at && at <= holds.indexOf(most);
}
