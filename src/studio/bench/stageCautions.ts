import type { LineStage } from '../../records/run.ts';

const rosin =
  'Rosin can make lungs and skin oversensitive, and its dust burns: dust gently, no flame near, wet-wipe what settles.';
const solvent =
  'Solvent: no flame, no spark, air moving away from your face. A weak smell is no proof of little vapour.';
const oilyCloths =
  'Oily and solvent cloths go into the closed metal can at once: in a heap they can take fire.';
const acid = 'Acid INTO gum, never gum into acid; nitric acid far from alcohol, solvent and oily cloths.';
const gloves = 'Gloves and eye protection while mixing, laying and lifting.';
const press =
  'Fingers clear of scraper, bed and gears; one person alone works the press, and says so before it moves.';
const lifting = 'Lift with two people or a trolley, never on fingers.';
const wetDust = 'Grain wet: dry stone dust must not be breathed, nor swept dry.';

const etching = [gloves, acid];
const washing = [solvent, oilyCloths];
const inking = [oilyCloths];
const printing = [press, oilyCloths];

const ofStage: Readonly<Partial<Record<LineStage, readonly string[]>>> = {
  level: [wetDust, lifting],
  grain: [wetDust, lifting],
  edges: [wetDust],
  powder: [rosin],
  'first-etch': etching,
  washout: washing,
  base: washing,
  'base-air': ['The base gives off vapour while it dries. Warm it only if the maker’s sheet allows it.'],
  'roll-up': inking,
  'trial-proofs': printing,
  'second-powder': [rosin],
  'second-etch': etching,
  'second-etch-quick': etching,
  'second-washout': washing,
  'second-base': washing,
  'second-base-air': [
    'The base gives off vapour while it dries. Warm it only if the maker’s sheet allows it.',
  ],
  'second-roll-up': inking,
  proofs: printing,
  edition: printing,
  'close-down': [oilyCloths, 'Acid capped and put away, far from solvent.'],
  regrain: [wetDust, lifting],
  hone: [wetDust],
  'spot-etch': etching,
  'counter-etch': ['Acid: gloves and eye protection, water at hand, away from solvent and oily cloths.'],
};

/** Who decides: stands below every list of cautions. */
export const cautionsDefer =
  'Local rules, the safety data sheets and those who may judge the room come first. Common practice, no source.';

/** What to mind in a stage, the most pressing first; empty where nothing of its own is known. */
export function stageCautions(stage: LineStage): readonly string[] {
  return ofStage[stage] ?? [];
}
