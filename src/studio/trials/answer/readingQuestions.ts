import type { PatchResidual, TestStoneAnswer } from '../../../records/testStoneAnswer.ts';

/** Farther off than this many times the usual distance is far: our rule, no source. */
const farTimes = 4;
/** Less than this of full cover is never far, whatever the rest do. Our rule. */
const leastFar = 0.02;
/** Thirds of fewer patches tell no scatter; scatter is told from scatter where one is twice the other. Our rule. */
const unlike = { patches: 5, times: 2 };

/** A question that a printer asks of readings, and what they say. */
export interface ReadingQuestion {
  readonly question: string;
  readonly answer: string;
}

/** How far the patches of one third, from light to dark, lie from what the rest say. */
export interface ThirdScatter {
  readonly of: 'light' | 'middle' | 'dark';
  /** Root of the mean square, in coverage; null where too few patches tell it. */
  readonly usual: number | null;
}

/** Is any patch far from what the rest say? @returns with the patches that are, the farthest first. */
export function farPatches(
  residuals: readonly PatchResidual[],
): ReadingQuestion & { readonly far: readonly PatchResidual[] } {
  const question = 'Is any patch far from what the rest say?';
  const sizes = residuals.map(({ residual }) => Math.abs(residual)).toSorted((a, b) => a - b);
  const usual = sizes[Math.floor(sizes.length / 2)] ?? 0;
  const limit = Math.max(leastFar, farTimes * usual);
  const far = residuals
    .filter(({ residual }) => Math.abs(residual) > limit)
    .toSorted((a, b) => Math.abs(b.residual) - Math.abs(a.residual));
  const most = Math.max(0, ...sizes).toFixed(2);
  if (far.length === 0) return { question, far, answer: `No: all ${residuals.length} lie within ±${most}.` };
  const { stone, patch, residual } = far[0]!;
  const side = residual > 0 ? 'darker' : 'lighter';
  const others =
    far.length === 1 ? '' : ` ${far.length} patches are that far: look at them, and at the stone.`;
  return {
    question,
    far,
    answer: `Yes: ${patch} on ${stone} printed ${Math.abs(residual).toFixed(2)} ${side} than the rest say.${others}`,
  };
}

/** Do readings scatter alike in light and dark? @returns with the scatter of each third of the patches by their tone. */
export function scatterByTone(
  residuals: readonly PatchResidual[],
): ReadingQuestion & { readonly thirds: readonly ThirdScatter[] } {
  const question = 'Do readings scatter alike in light and dark?';
  const ordered = residuals.toSorted((a, b) => a.fitted - b.fitted);
  const thirds = (['light', 'middle', 'dark'] as const).map((of, nth): ThirdScatter => {
    const own = ordered.slice(
      Math.round((nth * ordered.length) / 3),
      Math.round(((nth + 1) * ordered.length) / 3),
    );
    const square = own.reduce((sum, { residual }) => sum + residual ** 2, 0);
    return { of, usual: own.length < unlike.patches ? null : Math.sqrt(square / own.length) };
  });
  const [light, , dark] = thirds.map(({ usual }) => usual);
  if (light == null || dark == null)
    return { question, thirds, answer: 'Not known: it takes fifteen patches to tell.' };
  const range = `±${light.toFixed(3)} in the lightest third, ±${dark.toFixed(3)} in the darkest`;
  const [less, more] = [Math.min(light, dark), Math.max(light, dark)];
  return {
    question,
    thirds,
    answer:
      more >= unlike.times * Math.max(less, 1e-6)
        ? `No: ${range}. Take ranges of tones as rough.`
        : `Yes, near enough: ${range}.`,
  };
}

/** Did the stone change from edge to edge? */
export function edgeToEdge(position: TestStoneAnswer['position']): ReadingQuestion {
  const question = 'Did the stone change from edge to edge?';
  if (position.length === 0)
    return { question, answer: 'Not known: where patches lie and what they got can’t be told apart.' };
  const sure = position.filter(({ low, high }) => low > 0 || high < 0);
  const words = (sure.length > 0 ? sure : position).map(
    ({ along, low, high }) => `from ${along} ${signed(low)} to ${signed(high)}`,
  );
  return {
    question,
    answer: `${sure.length > 0 ? 'Yes' : 'Not that it shows'}: ${words.join(', ')} every 100 mm.`,
  };
}

function signed(value: number): string {
  return `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(3)}`;
}
