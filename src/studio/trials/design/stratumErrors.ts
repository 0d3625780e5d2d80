import type { TrialScatter, TrialWish } from '../../../records/trialDesign.ts';
import { combinationsOf, rowsOf } from './drawnTreatments.ts';

type Size = Pick<
  TrialWish,
  'stones' | 'whole' | 'sub' | 'perStone' | 'patchRepeats' | 'stripRepeats' | 'layout' | 'blocks'
>;

/** What a difference of two levels is held against. */
export interface StratumError {
  readonly df: number;
  /** Of the difference of two levels' means. */
  readonly variance: number;
}

/** How far differences of each treatment scatter by a trial's layout, with the degrees of freedom that tell it. */
export function errorsOf(
  size: Size,
  scatter: TrialScatter,
): Readonly<Record<'whole' | 'sub' | 'perStone', StratumError>> {
  const inStones = withinStones(size, scatter);
  const stoneLevels = size.perStone?.levels.length ?? 1;
  return {
    whole: inStones.whole,
    sub: inStones.sub,
    perStone: {
      df: size.stones - stoneLevels,
      variance: (2 * stoneLevels * (scatter.stone ** 2 + inStones.ofStone)) / size.stones,
    },
  };
}

interface WithinStones extends Readonly<Record<'whole' | 'sub', StratumError>> {
  /** Variance of a stone's mean that comes from its strips and patches. */
  readonly ofStone: number;
}

function withinStones(size: Size, scatter: TrialScatter): WithinStones {
  const patch = scatter.patch ** 2;
  const [wholes, subs] = [size.whole?.levels.length ?? 1, size.sub.levels.length];
  const combinations = combinationsOf(size).length;
  const layout = size.layout ?? 'split-plot';
  switch (layout) {
    case 'split-plot': {
      const strips = size.stones * wholes * size.stripRepeats;
      const perStrip = subs * size.patchRepeats;
      const stripVariance = scatter.strip ** 2 + patch / perStrip;
      return {
        whole: { df: strips - size.stones - (wholes - 1), variance: (2 * stripVariance * wholes) / strips },
        sub: {
          df: strips * perStrip - strips - (subs - 1) * wholes,
          variance: (2 * patch) / (strips * size.patchRepeats),
        },
        ofStone: (stripVariance * size.stones) / strips,
      };
    }
    case 'blocked': {
      const perStone = { none: 1, 'head-tail': 2, 'left-right': 2, both: 4 }[size.blocks ?? 'head-tail'];
      const blocks = size.stones * perStone;
      const all = blocks * combinations * size.patchRepeats;
      const df = all - blocks - (combinations - 1);
      return {
        whole: { df, variance: (2 * patch * wholes) / all },
        sub: { df, variance: (2 * patch * subs) / all },
        ofStone: scatter.strip ** 2 / perStone + (patch * size.stones) / all,
      };
    }
    case 'row-column': {
      const rows = rowsOf(size);
      const all = size.stones * rows * combinations;
      const df = size.stones * (rows - 1) * (combinations - 1) - (combinations - 1);
      // Columns that lack some combinations cost as much as incomplete blocks do: Yates, F. (1936), Annals of Eugenics 7,
      // 121–140, doi 10.1111/j.1469-1809.1936.tb02134.x. With a full square, nothing.
      const kept = (combinations * (rows - 1)) / (rows * (combinations - 1));
      return {
        whole: { df, variance: (2 * patch * wholes) / (all * kept) },
        sub: { df, variance: (2 * patch * subs) / (all * kept) },
        ofStone: scatter.strip ** 2 / rows + (patch * size.stones) / all,
      };
    }
    default:
      return layout satisfies never;
  }
}
