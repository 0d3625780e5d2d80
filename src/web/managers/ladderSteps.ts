import type { ToneCurve } from '../../records/comparison.ts';

/** One step of the tone ladder: coverage drawn, coverage printed with half its 95 % interval, and the side of the curve's loss or fill point it is on. */
export interface LadderStep {
  readonly drawn: number;
  readonly printed: number;
  readonly plusMinus: number;
  readonly became: 'lost' | 'filled' | null;
}

const wanted = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9];

/**
 * The trade's steps read off a tone curve, straight between its points; steps outside what was drawn are left out.
 * A curve of one point gives that one step.
 */
export function ladderSteps(curve: ToneCurve): LadderStep[] {
  const points = [...curve.points].sort((a, b) => a.drawn - b.drawn);
  const first = points[0];
  const last = points[points.length - 1];
  if (!first || !last) return [];
  const inside = wanted.filter((step) => step >= first.drawn - 0.02 && step <= last.drawn + 0.02);
  const drawnSteps = inside.length > 0 ? inside : [first.drawn];
  return drawnSteps.map((drawn) => {
    const above = points.findIndex((point) => point.drawn >= drawn);
    const b = points[above === -1 ? points.length - 1 : above]!;
    const a = points[Math.max(above === -1 ? points.length - 1 : above - 1, 0)]!;
    const share = b.drawn > a.drawn ? Math.min(Math.max((drawn - a.drawn) / (b.drawn - a.drawn), 0), 1) : 0;
    const between = (from: number, to: number) => from + (to - from) * share;
    const printed = between(a.printed, b.printed);
    const plusMinus = (between(a.high, b.high) - between(a.low, b.low)) / 2;
    const lost = curve.lossPoint !== null && drawn < curve.lossPoint;
    const filled = curve.fillPoint !== null && drawn > curve.fillPoint;
    return { drawn, printed, plusMinus, became: lost ? 'lost' : filled ? 'filled' : null };
  });
}
