import type { PatchFinding, TestStoneCaution } from '../../../records/patchReading.ts';
import type { StonePatch, TestStone } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { signedArea } from '../../../science/geometry/polygon.ts';
import { sharedArea } from '../../../science/geometry/polygonArea.ts';
import { patchNames } from '../places/patchName.ts';
import { pxPerMm, wrongScaleSentence } from './tracingScale.ts';

/** A patch of fewer px a side gives its tone badly: its edge is most of it. Our rule. */
const leastSidePx = 24;
/** Outlines laid by hand may touch; more than this of the smaller one is an overlap. Our rule. */
const touching = 0.02;

/** What is judged of a test stone before it is read. */
export type LaidStone = Pick<TestStone, 'sizeMm' | 'patches' | 'factors' | 'drawn' | 'ruler'>;

const judged = ({ intention }: StonePatch) => intention === 'image' || intention === 'control';

/** What to mind about a test stone before anything is read of it. */
export function layoutCautions(stone: LaidStone): TestStoneCaution[] {
  const { patches, factors } = stone;
  const cautions: TestStoneCaution[] = [];
  const scale = wrongScaleSentence(stone);
  if (scale !== null) cautions.push({ code: 'wrong-scale', message: scale });
  const small = smallPatches(stone);
  if (small.length > 0)
    cautions.push({
      code: 'small-patches',
      message: `${patchNames(small)} ${are(small)} smaller on the photograph than ${leastSidePx} px a side: photograph the stone nearer or in better light, or take larger patches.`,
    });
  const over = overlapping(patches);
  if (over.length > 0)
    cautions.push({
      code: 'patches-overlap',
      message: `${patchNames(over)} overlap: ink of one would be read as the other’s. Move them apart.`,
    });
  const image = patches.filter(judged);
  if (image.length === 0) return cautions;
  const unknown = image.filter(({ treatment }) => factors.some(({ name }) => !(name in treatment)));
  if (unknown.length > 0)
    cautions.push({
      code: 'treatments-unknown',
      message: `What ${patchNames(unknown)} got is not typed for every factor: they are read, and count for nothing where it is missing.`,
    });
  if (!image.some(({ intention }) => intention === 'control'))
    cautions.push({
      code: 'no-control',
      message:
        'No patch is a control: what was tried can only be compared with one another, and a bad day for all of them would not show. Mark those that got what you always do, or lay some next time.',
    });
  if (factors.length > 0 && !replicated(image, stone))
    cautions.push({
      code: 'no-replicates',
      message:
        'Nothing that was tried stands in two squares: how much two squares treated alike differ is not known, so no difference here can be told from chance. Lay each at least twice next time, better three times.',
    });
  return cautions;
}

/** What to mind about the findings of one print. */
export function findingCautions(findings: readonly PatchFinding[]): TestStoneCaution[] {
  const cautions: TestStoneCaution[] = [];
  const unread = findings.filter(({ camera, holdBy }) => camera.why !== null && holdBy !== 'hand');
  const missing = missingStrips(findings);
  if (missing.length > 0)
    cautions.push({
      code: 'missing-strips',
      message: `Nothing could be read of ${missing.join(', ')}: what was tried there is not answered by this print. Pull one on a sheet that covers it, or read another print.`,
    });
  const reasons = new Map<string, PatchFinding[]>();
  for (const finding of unread)
    reasons.set(finding.camera.why!, [...(reasons.get(finding.camera.why!) ?? []), finding]);
  for (const [why, own] of reasons) {
    const names = patchNames(own.map(({ patch, row, column }) => ({ id: patch, row, column })));
    cautions.push({ code: 'unread-patches', message: `${names} not read. ${why}` });
  }
  return cautions;
}

/** Rows and strips of which no patch that was to be judged could be. */
function missingStrips(findings: readonly PatchFinding[]): string[] {
  const groups = new Map<string, boolean>();
  for (const { strip, row, intention, camera } of findings) {
    if (intention !== 'image' && intention !== 'control') continue;
    const name = strip !== null ? `strip ${strip}` : row !== null ? `row ${row}` : null;
    if (name !== null) groups.set(name, (groups.get(name) ?? false) || camera.hold !== null);
  }
  const gone = [...groups].filter(([, read]) => !read).map(([name]) => name);
  return gone.length === groups.size ? [] : gone;
}

function replicated(image: readonly StonePatch[], { factors }: LaidStone): boolean {
  const squares = new Map<string, Set<string>>();
  for (const { square, treatment } of image) {
    if (factors.some(({ name }) => !(name in treatment))) continue;
    const given = JSON.stringify(factors.map(({ name }) => treatment[name]));
    squares.set(given, (squares.get(given) ?? new Set()).add(square));
  }
  return [...squares.values()].some((alike) => alike.size > 1);
}

function smallPatches(stone: LaidStone): StonePatch[] {
  const scale = pxPerMm(stone);
  if (scale === null) return [];
  return stone.patches.filter(
    ({ polygonMm, intention }) =>
      intention !== 'guide' && Math.sqrt(Math.abs(signedArea(polygonMm))) * scale < leastSidePx,
  );
}

function overlapping(patches: readonly StonePatch[]): StonePatch[] {
  const boxes = patches.map(({ polygonMm }) => boxOf(polygonMm));
  const found = new Set<StonePatch>();
  const solid = patches.map(({ intention }) => intention !== 'guide');
  patches.forEach((one, i) => {
    for (let j = i + 1; j < patches.length; j++) {
      const other = patches[j]!;
      if (!solid[i] || !solid[j] || !boxesMeet(boxes[i]!, boxes[j]!)) continue;
      const least = Math.min(Math.abs(signedArea(one.polygonMm)), Math.abs(signedArea(other.polygonMm)));
      if (sharedArea(one.polygonMm, other.polygonMm) <= touching * least) continue;
      found.add(one).add(other);
    }
  });
  return [...found];
}

type Box = readonly [number, number, number, number];

function boxOf(polygon: readonly Point[]): Box {
  const [xs, ys] = [polygon.map(([x]) => x), polygon.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

function boxesMeet(one: Box, other: Box): boolean {
  return one[0] < other[2] && other[0] < one[2] && one[1] < other[3] && other[1] < one[3];
}

function are(ids: readonly unknown[]): string {
  return ids.length === 1 ? 'is' : 'are';
}
