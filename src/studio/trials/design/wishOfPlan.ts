import type {
  PlannedTreatment,
  TestPlanDraft,
  TreatmentKind,
  TreatmentReach,
} from '../../../records/testPlan.ts';
import type { TrialFactor, TrialWish } from '../../../records/trialDesign.ts';

const kindNames: readonly (readonly [TreatmentKind, RegExp])[] = [
  ['medium', /^(medium|media|drawing material)$/],
  ['deposit', /deposit|tone drawn/],
  ['contact', /contact|time|minutes|seconds/],
  ['etch', /etch|gum|tannic|acid/],
  ['powder', /powder|rosin|talc/],
  ['rest', /rest/],
  ['washout', /wash ?out|solvent/],
  ['roll-up', /roll|ink|charge/],
];

/** What a treatment varies, by its name; `other` where the name says nothing. */
export function kindOfName(name: string): TreatmentKind {
  const words = name.trim().toLowerCase();
  return kindNames.find(([, pattern]) => pattern.test(words))?.[0] ?? 'other';
}

/** What stands in the way of laying a planned test out, in sentences; nothing where it can be. */
export function planTroubles({ title, treatments, stones }: TestPlanDraft): string[] {
  const of = (reach: TreatmentReach) => treatments.filter((each) => each.reach === reach);
  const found: string[] = [];
  if (title.trim() === '') found.push('Give the test a name.');
  const names = treatments.map(({ name }) => name.trim());
  if (names.includes('')) found.push('All that is compared needs a name.');
  if (new Set(names).size < names.length) found.push('Two things that are compared have one name.');
  for (const { name: typed, levels } of treatments) {
    const name = typed.trim() || 'it';
    if (levels.length < 2) found.push(`Say at least two to try of ${name}.`);
    else if (levels.length > 24) found.push(`24 to try of ${name} at most.`);
    else if (levels.some((level) => level.length > 60))
      found.push(`One to try of ${name} has over 60 letters.`);
  }
  if (of('patch').length === 0) found.push('One thing must be given to each patch by itself.');
  if (of('strip').length > 1) found.push('Only one thing can be given to whole strips.');
  if (of('stone').length > 1) found.push('Only one thing can be given to whole stones.');
  if (of('patch').length > 2 || (of('patch').length === 2 && of('strip').length === 1))
    found.push('Two things at most on one stone: give the third to whole stones.');
  const perStone = of('stone')[0];
  const shares = perStone?.levels.length ?? 1;
  if (shares > 1 && stones % shares !== 0)
    found.push(`Of ${perStone!.name} ${shares} are tried: take ${shares} stones, or twice as many.`);
  return found;
}

/** All levels that may be what the others are compared with. */
export function controlsOfPlan({ treatments }: Pick<TestPlanDraft, 'treatments'>): string[] {
  return [...new Set(treatments.flatMap(({ levels }) => levels))];
}

/** A planned test as it is asked for; null while something stands in the way. */
export function wishOfPlan(plan: TestPlanDraft): TrialWish | null {
  if (planTroubles(plan).length > 0) return null;
  const of = (reach: TreatmentReach) => plan.treatments.filter((each) => each.reach === reach).map(factorOf);
  const [sub, beside] = of('patch');
  const [strip] = of('strip');
  const [perStone] = of('stone');
  return {
    title: plan.title.trim(),
    stone: { widthMm: plan.widthMm, heightMm: plan.heightMm },
    stones: plan.stones,
    whole: strip ?? beside ?? null,
    sub: sub!,
    layout: strip ? 'split-plot' : plan.lay,
    blocks: plan.blocks,
    perStone: perStone ?? null,
    cameraPixels: plan.cameraPixels,
    patchRepeats: plan.patchRepeats,
    stripRepeats: strip ? plan.stripRepeats : 1,
    control: plan.control !== null && controlsOfPlan(plan).includes(plan.control) ? plan.control : null,
    patchMm: null,
    gutterMm: 6,
    stripGutterMm: 12,
    border: { sidesMm: 15, endsMm: 25 },
    seed: plan.seed,
    wanted: plan.wanted,
    scatter: null,
  };
}

function factorOf({ name, levels }: PlannedTreatment): TrialFactor {
  return { name: name.trim().slice(0, 60), levels };
}
