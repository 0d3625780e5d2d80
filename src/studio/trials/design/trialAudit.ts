import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding } from '../../../records/testStoneAnswer.ts';
import type { TrialAssignment, TrialPatch, TrialWish } from '../../../records/trialDesign.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { auditPlaces } from '../audit/auditPlaces.ts';
import { auditTrial } from '../audit/auditTrial.ts';

interface Laid {
  readonly patches: readonly TrialPatch[];
  readonly list: readonly TrialAssignment[];
}

/** What a trial could not tell from what, told before anything is drawn. */
export function auditLayout(wish: TrialWish, laid: Laid): AuditFinding[] {
  return auditTrial({ rows: rowsOf(wish, laid), factors: factorsOf(wish), prints: 1 }, []);
}

/** Did lot put every level of a treatment at one place each time? */
export function alwaysInPlace(wish: TrialWish, laid: Laid): boolean {
  const units = new Set(laid.patches.map(({ stone, strip }) => `${stone} ${strip}`)).size;
  if (units < 2) return false;
  return auditPlaces(rowsOf(wish, laid), factorsOf(wish)).some(({ weight }) => weight === 'no-cause');
}

/** What is varied in a trial, and to what it is given at once. */
export function factorsOf({ whole, sub, perStone, layout }: TrialWish): TestFactor[] {
  return [
    ...(perStone ? [{ name: perStone.name, givenTo: 'stone' as const }] : []),
    ...(whole
      ? [
          {
            name: whole.name,
            givenTo: (layout ?? 'split-plot') === 'split-plot' ? ('strip' as const) : ('patch' as const),
          },
        ]
      : []),
    { name: sub.name, givenTo: 'patch' },
  ];
}

function rowsOf(wish: TrialWish, { patches, list }: Laid): TrialPatchRow[] {
  const got = new Map(list.map((each) => [each.code, each]));
  return patches.map(({ code, stone, strip, polygonMm }) => {
    const { whole, sub, perStone } = got.get(code)!;
    const [[left, top], , [right, bottom]] = polygonMm as unknown as [number, number][];
    const name = `${stone}`;
    return {
      stone: name,
      patch: code,
      name: code,
      units: { stone: name, strip: `${name} strip ${strip}`, square: code, patch: code },
      levels: {
        [wish.sub.name]: sub,
        ...(wish.whole && whole !== null ? { [wish.whole.name]: whole } : {}),
        ...(wish.perStone && perStone !== undefined ? { [wish.perStone.name]: perStone } : {}),
      },
      centreMm: [(left! + right!) / 2, (top! + bottom!) / 2],
      sizeMm: [wish.stone.widthMm, wish.stone.heightMm],
      hold: 'held',
      printed: null,
      drawn: null,
      control:
        wish.control !== null &&
        (whole === wish.control || sub === wish.control || perStone === wish.control),
    };
  });
}
