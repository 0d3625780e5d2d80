import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { TreatmentKind } from '../../../records/testPlan.ts';
import type { StonePatch } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { patchNames } from '../places/patchName.ts';

/** What is etched as one on a test stone: a whole strip, or neighbours in it that get the same. */
export interface EtchedAsOne {
  readonly id: string;
  readonly name: string;
  /** Mm from the top left of the rectangle that the stone is read in. */
  readonly polygonMm: readonly Point[];
  readonly patches: readonly string[];
  /** Levels by kind: what the whole place gets; a kind that varies inside it is left out. */
  readonly levels: Readonly<Partial<Record<TreatmentKind, string>>>;
}

/** The etch is laid this far over the patches: round a strip, and round patches that lie closer. Our rule, no source. */
const overMm = { strip: 3, patches: 1 };

/**
 * The places of a test stone that are etched as one, in the order in which they lie. What tells them apart is the etch and its
 * time; where neither is varied, what is drawn, since the etch follows it.
 */
export function etchedPlaces(
  patches: readonly StonePatch[],
  kinds: Readonly<Record<string, TreatmentKind>>,
  sizeMm: Point,
): EtchedAsOne[] {
  const varied = new Set(Object.values(kinds));
  const telling: readonly TreatmentKind[] = varied.has('etch')
    ? ['etch', 'contact']
    : ['medium', 'deposit', 'contact'];
  const keyOf = (patch: StonePatch) => telling.map((kind) => levelOf(patch, kinds, kind) ?? '').join(' · ');
  return stripsOf(patches).flatMap(({ strip, own }) => {
    const alike = strip !== null && new Set(own.map(keyOf)).size === 1;
    const groups = alike ? [own] : runsOf(own, keyOf);
    return groups.map((group): EtchedAsOne => {
      const name = alike ? `Strip ${strip}` : upperFirst(patchNames(group));
      return {
        id: alike ? `strip-${strip}` : group[0]!.id,
        name,
        polygonMm: boxRound(group, alike ? overMm.strip : overMm.patches, sizeMm),
        patches: group.map(({ id }) => id),
        levels: sharedLevels(group, kinds),
      };
    });
  });
}

/** What a patch got of one kind; undefined where nobody said, or nothing of that kind is varied. */
export function levelOf(
  { treatment }: Pick<StonePatch, 'treatment'>,
  kinds: Readonly<Record<string, TreatmentKind>>,
  kind: TreatmentKind,
): string | undefined {
  const name = Object.keys(kinds).find((each) => kinds[each] === kind);
  return name === undefined ? undefined : treatment[name];
}

function stripsOf(patches: readonly StonePatch[]): { strip: string | null; own: StonePatch[] }[] {
  const strips = [...new Set(patches.map(({ strip }) => strip))];
  return strips.map((strip) => ({ strip, own: patches.filter((patch) => patch.strip === strip) }));
}

/** Neighbours in one row that get the same; without a row, each patch by itself. */
function runsOf(patches: readonly StonePatch[], keyOf: (patch: StonePatch) => string): StonePatch[][] {
  const ordered = patches.toSorted(
    (a, b) => (a.row ?? 0) - (b.row ?? 0) || (a.column ?? 0) - (b.column ?? 0),
  );
  const runs: StonePatch[][] = [];
  for (const patch of ordered) {
    const before = runs.at(-1)?.at(-1);
    const beside =
      before !== undefined &&
      patch.row !== null &&
      before.row === patch.row &&
      before.column !== null &&
      patch.column === before.column + 1;
    if (beside && keyOf(before) === keyOf(patch)) runs.at(-1)!.push(patch);
    else runs.push([patch]);
  }
  return runs;
}

function sharedLevels(
  group: readonly StonePatch[],
  kinds: Readonly<Record<string, TreatmentKind>>,
): EtchedAsOne['levels'] {
  return Object.fromEntries(
    [...new Set(Object.values(kinds))].flatMap((kind) => {
      const levels = new Set(group.map((patch) => levelOf(patch, kinds, kind)));
      const [level] = levels;
      return levels.size === 1 && level !== undefined ? [[kind, level]] : [];
    }),
  );
}

function boxRound(group: readonly StonePatch[], overMm: number, [width, height]: Point): Point[] {
  const xs = group.flatMap(({ polygonMm }) => polygonMm.map(([x]) => x));
  const ys = group.flatMap(({ polygonMm }) => polygonMm.map(([, y]) => y));
  const left = Math.max(0, Math.min(...xs) - overMm);
  const top = Math.max(0, Math.min(...ys) - overMm);
  const right = Math.min(width, Math.max(...xs) + overMm);
  const bottom = Math.min(height, Math.max(...ys) + overMm);
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}
