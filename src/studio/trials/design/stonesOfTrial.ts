import type { StonePatch, TestStoneDraft } from '../../../records/testStone.ts';
import type { TrialAssignment, TrialPatch, TrialWish } from '../../../records/trialDesign.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { squareName } from '../places/patchName.ts';
import { factorsOf } from './trialAudit.ts';

/** What a designed trial says of one of its stones, as a test stone is kept. */
export type PlannedStone = Pick<TestStoneDraft, 'name' | 'sizeMm' | 'factors' | 'patches'>;

interface Laid {
  readonly patches: readonly TrialPatch[];
  readonly list: readonly TrialAssignment[];
}

/**
 * The stones of a trial with their patches and what each gets. Their rectangle is the dashed one of the tracing sheet, inside the
 * border: its corners can be marked so that they print, the stone's own can't. Rows and columns are counted as they lie.
 */
export function stonesOfTrial(wish: TrialWish, { patches, list }: Laid): PlannedStone[] {
  const { stone, stones, border, title } = wish;
  const factors = factorsOf(wish);
  const got = new Map(list.map((each) => [each.code, each]));
  return Array.from({ length: stones }, (_, index) => {
    const own = patches.filter((patch) => patch.stone === index + 1);
    return {
      name: stones === 1 ? title : `${title}, stone ${index + 1} of ${stones}`,
      sizeMm: [stone.widthMm - 2 * border.sidesMm, stone.heightMm - 2 * border.endsMm],
      factors,
      patches: own.map(({ code, strip, row, column, polygonMm }): StonePatch => {
        const treatment = treatmentOf(wish, got.get(code)!);
        const isControl = wish.control !== null && Object.values(treatment).includes(wish.control);
        return {
          id: squareName(row, column),
          square: squareName(row, column),
          strip,
          row,
          column,
          polygonMm: polygonMm.map(([x, y]): Point => [round(x - border.sidesMm), round(y - border.endsMm)]),
          intention: isControl ? 'control' : 'image',
          treatment,
          note: '',
        };
      }),
    };
  });
}

function treatmentOf(wish: TrialWish, { whole, sub, perStone }: TrialAssignment): Record<string, string> {
  return {
    ...(wish.perStone && perStone !== undefined ? { [wish.perStone.name]: perStone } : {}),
    ...(wish.whole && whole !== null ? { [wish.whole.name]: whole } : {}),
    [wish.sub.name]: sub,
  };
}

function round(mm: number): number {
  return Math.round(mm * 100) / 100;
}
