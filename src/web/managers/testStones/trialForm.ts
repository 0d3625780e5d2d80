import type { CheapestTrial, TrialBlocks, TrialFactor, TrialWish } from '../../../records/trialDesign.ts';

/** To what a treatment is given at once: easy, hard and hardest to vary. */
export type Reach = 'patch' | 'strip' | 'stone';

/** A treatment as it is typed. */
export interface TypedTreatment {
  readonly id: number;
  readonly name: string;
  /** Its levels, parted by commas. */
  readonly levels: string;
  readonly reach: Reach;
  /** Levels said to be new ones; left out: none. */
  readonly newLevels?: readonly string[];
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
}

/** A test to begin with: which etch holds which medium. */
export function startingTrial(seed: number): TypedTrial {
  return {
    title: '',
    treatments: [
      { id: 1, name: 'medium', levels: '', reach: 'patch' },
      { id: 2, name: 'etch', levels: '', reach: 'strip' },
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

/** The levels of a treatment, each once. */
export function levelsOf({ levels }: TypedTreatment): string[] {
  const parts = levels.split(/[,\n]/).map((level) => level.trim());
  return [...new Set(parts)].filter((level) => level !== '');
}

/** All levels that may be what the others are compared with. */
export function controlsOf({ treatments }: TypedTrial): string[] {
  return [...new Set(treatments.flatMap(levelsOf))];
}

/** Whether something is given to whole strips. */
export function hasStrips({ treatments }: TypedTrial): boolean {
  return treatments.some(({ reach }) => reach === 'strip');
}

/** What stands in the way of laying a test out, in sentences; nothing where it can be. */
export function trialTroubles(typed: TypedTrial): string[] {
  const { title, treatments, stones } = typed;
  const of = (reach: Reach) => treatments.filter((each) => each.reach === reach);
  const found: string[] = [];
  if (title.trim() === '') found.push('Give the test a name.');
  const names = treatments.map(({ name }) => name.trim());
  if (names.includes('')) found.push('Every treatment needs a name.');
  if (new Set(names).size < names.length) found.push('Two treatments have one name.');
  for (const each of treatments) {
    const levels = levelsOf(each);
    const name = each.name.trim() || 'it';
    if (levels.length < 2) found.push(`Type two levels of ${name} at least, parted by commas.`);
    else if (levels.length > 24) found.push(`24 levels of ${name} at most.`);
    else if (levels.some((level) => level.length > 60)) found.push(`A level of ${name} has over 60 letters.`);
  }
  if (of('patch').length === 0) found.push('One treatment must be given to each patch by itself.');
  if (of('strip').length > 1) found.push('Only one treatment can be given to whole strips.');
  if (of('stone').length > 1) found.push('Only one treatment can be given to whole stones.');
  if (of('patch').length > 2 || (of('patch').length === 2 && of('strip').length === 1))
    found.push('Two treatments at most on one stone: give the third to whole stones.');
  const perStone = of('stone')[0];
  const shares = perStone ? levelsOf(perStone).length : 1;
  if (shares > 1 && stones % shares !== 0)
    found.push(`${perStone!.name} has ${shares} levels: take ${shares} stones, or twice as many.`);
  return found;
}

/** What is typed, as it is asked for; null while something stands in the way. */
export function wishOf(typed: TypedTrial): TrialWish | null {
  if (trialTroubles(typed).length > 0) return null;
  const of = (reach: Reach) => typed.treatments.filter((each) => each.reach === reach).map(factorOf);
  const [sub, beside] = of('patch');
  const [strip] = of('strip');
  const [perStone] = of('stone');
  return {
    title: typed.title.trim(),
    stone: { widthMm: typed.widthMm, heightMm: typed.heightMm },
    stones: typed.stones,
    whole: strip ?? beside ?? null,
    sub: sub!,
    layout: strip ? 'split-plot' : typed.lay,
    blocks: typed.blocks,
    perStone: perStone ?? null,
    cameraPixels: typed.cameraPixels,
    patchRepeats: typed.patchRepeats,
    stripRepeats: strip ? typed.stripRepeats : 1,
    control: typed.control !== null && controlsOf(typed).includes(typed.control) ? typed.control : null,
    patchMm: null,
    gutterMm: 6,
    stripGutterMm: 12,
    border: { sidesMm: 15, endsMm: 25 },
    seed: typed.seed,
    wanted: typed.wanted,
    scatter: null,
  };
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

function factorOf(typed: TypedTreatment): TrialFactor {
  return { name: typed.name.trim().slice(0, 60), levels: levelsOf(typed) };
}
