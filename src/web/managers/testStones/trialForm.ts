import type { OwnEtch, PlannedTreatment, TestPlanDraft } from '../../../records/testPlan.ts';
import type { CheapestTrial, TrialBlocks, TrialWish } from '../../../records/trialDesign.ts';
import { mediumName } from '../../../studio/etch/mediumName.ts';
import {
  controlsOfPlan,
  kindOfName,
  planTroubles,
  wishOfPlan,
} from '../../../studio/trials/design/wishOfPlan.ts';

/** To what a treatment is given at once: easy, hard and hardest to vary. */
export type Reach = 'patch' | 'strip' | 'stone';

/** A treatment as it is typed. */
export interface TypedTreatment {
  readonly id: number;
  readonly name: string;
  /** What is tried of it, a line each, as it is typed; what is blank counts for nothing. */
  readonly levels: readonly string[];
  readonly reach: Reach;
  /** Levels said to be new ones; left out: none. */
  readonly newLevels?: readonly string[];
  /** What it varies as it was kept, which holds as long as it bears that name; left out: its name says. */
  readonly kept?: Pick<PlannedTreatment, 'name' | 'kind'>;
}

/** A test as it is typed. */
export interface TypedTrial {
  readonly title: string;
  readonly treatments: readonly TypedTreatment[];
  /** null: every level is compared with every other. */
  readonly control: string | null;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly stones: number;
  readonly patchRepeats: number;
  readonly stripRepeats: number;
  /** How patches lie where nothing is given to whole strips. */
  readonly lay: 'blocked' | 'row-column';
  /** How a stone is parted into blocks. */
  readonly blocks: TrialBlocks;
  /** Coverage. */
  readonly wanted: number | null;
  readonly cameraPixels: number | null;
  readonly seed: number;
  /** Etches that are in no table, as they were kept; left out: none. */
  readonly ownEtches?: readonly OwnEtch[];
}

/** A test to begin with: which etch holds which medium. */
export function startingTrial(seed: number): TypedTrial {
  return {
    title: '',
    treatments: [
      { id: 1, name: 'medium', levels: ['', ''], reach: 'patch' },
      { id: 2, name: 'etch', levels: ['', ''], reach: 'strip' },
    ],
    control: null,
    widthMm: 300,
    heightMm: 400,
    stones: 3,
    patchRepeats: 1,
    stripRepeats: 1,
    lay: 'blocked',
    blocks: 'head-tail',
    wanted: null,
    cameraPixels: null,
    seed,
  };
}

/** The levels of a treatment, each once; what is parted by commas in one line is several. */
export function levelsOf({ levels }: Pick<TypedTreatment, 'levels'>): string[] {
  const parts = levels.flatMap((line) => line.split(/[,\n]/)).map((level) => level.trim());
  return [...new Set(parts)].filter((level) => level !== '');
}

/** Lines to type what is tried on: one for each, two at least. */
export function levelLines(levels: readonly string[]): string[] {
  return [...levels, '', ''].slice(0, Math.max(2, levels.length));
}

/** What is tried, with one more: on the first line that is blank, else on a line of its own. */
export function withLevelTyped(levels: readonly string[], level: string): string[] {
  const blank = levels.findIndex((line) => line.trim() === '');
  return blank < 0 ? [...levels, level] : levels.with(blank, level);
}

/** All levels that may be what the others are compared with. */
export function controlsOf(typed: TypedTrial): string[] {
  return controlsOfPlan(planOfTyped(typed));
}

/** Whether something is given to whole strips. */
export function hasStrips({ treatments }: TypedTrial): boolean {
  return treatments.some(({ reach }) => reach === 'strip');
}

/** What stands in the way of laying a test out, in sentences; nothing where it can be. */
export function trialTroubles(typed: TypedTrial): string[] {
  return planTroubles(planOfTyped(typed));
}

/** What is typed, as it is asked for; null while something stands in the way. */
export function wishOf(typed: TypedTrial): TrialWish | null {
  return wishOfPlan(planOfTyped(typed));
}

/** The test in the layout and size of one that would do: what lies in strips, or on patches of its own, lies as that has it. */
export function sizedAs(typed: TypedTrial, cheapest: CheapestTrial): TypedTrial {
  const { layout, blocks, stones, stripRepeats, patchRepeats } = cheapest;
  const inStrips = layout === 'split-plot';
  const from: Reach = inStrips ? 'patch' : 'strip';
  const moved = typed.treatments.findLast(({ reach }) => reach === from);
  // In strips already, or one treatment alone.
  const stays =
    inStrips && (hasStrips(typed) || typed.treatments.filter((one) => one.reach === 'patch').length < 2);
  return {
    ...typed,
    treatments: typed.treatments.map((one) =>
      one === moved && !stays ? { ...one, reach: inStrips ? 'strip' : 'patch' } : one,
    ),
    lay: inStrips ? typed.lay : layout,
    blocks: blocks ?? typed.blocks,
    stones,
    stripRepeats,
    patchRepeats,
  };
}

/** A test as it is typed, as it is kept: what a treatment varies is told by its name. */
export function planOfTyped({ treatments, ...typed }: TypedTrial): TestPlanDraft {
  return {
    ...typed,
    treatments: treatments.map((each) => ({
      name: each.name.slice(0, 60),
      kind: each.kept?.name === each.name ? each.kept.kind : kindOfName(each.name),
      levels: levelsOf(each)
        .map((level) => (isMedium(each) ? mediumName(level) : level))
        .slice(0, 60),
      reach: each.reach,
      newLevels: (each.newLevels ?? []).filter((level) => levelsOf(each).includes(level)),
    })),
    ownEtches: typed.ownEtches ?? [],
  };
}

function isMedium({ name, kept }: TypedTreatment): boolean {
  return (kept?.name === name ? kept.kind : kindOfName(name)) === 'medium';
}

/** A kept plan, to be typed on. */
export function typedOfPlan(plan: TestPlanDraft): TypedTrial {
  const { title, control, widthMm, heightMm, stones, patchRepeats, stripRepeats } = plan;
  const { lay, blocks, wanted, cameraPixels, seed, ownEtches } = plan;
  return {
    title,
    control,
    widthMm,
    heightMm,
    stones,
    patchRepeats,
    stripRepeats,
    lay,
    blocks,
    wanted,
    cameraPixels,
    seed,
    ownEtches,
    treatments: plan.treatments.map(({ name, kind, levels, reach, newLevels }, index) => ({
      id: index + 1,
      name,
      // Plans kept earlier may name media by what files call them.
      levels: levelLines(kind === 'medium' ? levels.map(mediumName) : levels),
      reach,
      newLevels,
      kept: { name, kind },
    })),
  };
}
