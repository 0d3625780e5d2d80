import { normalDraw, seededRandom } from '../../src/foundation/random.ts';
import type { Features } from '../../src/records/suspects.ts';
import { type Cause, causes, logFeatures } from '../../src/records/suspects.ts';
import type { Drawing } from '../../src/sample/render/drawing.ts';
import { faultSheet } from '../../src/sample/render/layouts/faultSheet.ts';
import { faithfulTransfer, noDamage } from '../../src/sample/render/printing.ts';
import { plantCause } from './plantCause.ts';
import type { PlantedPull, Planting } from './planting.ts';
import { plantUnknown } from './plantUnknown.ts';

/** A simulated stone with two pulls, the causes that were planted, and its log. */
export interface PlantedCase {
  readonly seed: number;
  readonly drawing: Drawing;
  readonly causes: readonly Cause[];
  /** The unknown fault that was planted; null for none. */
  readonly unknown: string | null;
  readonly pulls: readonly [PlantedPull, PlantedPull];
  readonly log: Features;
  readonly photographSpoiled: boolean;
}

/**
 * Settings of two simulations that share nothing but the kinds of fault: one to fit with, one to score with. `strength` scales every
 * fault; the drawings differ in size, the unknown faults in kind.
 */
export interface SimulationSettings {
  readonly name: 'fitting' | 'scoring';
  readonly firstSeed: number;
  readonly sizeMm: readonly [number, number];
  readonly strength: readonly [number, number];
  readonly logKnown: number;
  readonly baseline: number;
}

export const fittingSettings: SimulationSettings = {
  name: 'fitting',
  firstSeed: 1_000_000,
  sizeMm: [120, 150],
  strength: [0.85, 1.15],
  logKnown: 0.6,
  baseline: 0.03,
};

export const scoringSettings: SimulationSettings = {
  name: 'scoring',
  firstSeed: 20_000_000,
  sizeMm: [132, 164],
  strength: [0.75, 1.3],
  logKnown: 0.7,
  baseline: 0.045,
};

/** How many causes a case has, in turn: half single, a third paired, a sixth unknown. */
const pattern = ['one', 'two', 'one', 'unknown', 'one', 'two'] as const;

/** The case of an index: the same settings and index give the same case. */
export function plantedCase(settings: SimulationSettings, index: number): PlantedCase {
  const seed = settings.firstSeed + index * 17;
  const random = seededRandom(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const strength = between(...settings.strength);
  const drawing = faultSheet(seed + 1, settings.sizeMm);
  const slope = settings.baseline;
  const gain = between(0.02, 0.06);
  const lost = between(0.005, 0.03);
  const pull = (): PlantedPull => ({
    transfer: { ...faithfulTransfer, gain, lightsLost: [0, lost], darksClosed: [0.9, 1.1] },
    zoneTransfers: {},
    damage: noDamage,
    faults: [{ kind: 'slope', across: between(-slope, slope), along: between(-slope, slope) }],
    weakPrint: 0.03 * normalDraw(random),
    weakStone: 0.03 * normalDraw(random),
  });
  const planting: Planting = {
    random,
    between,
    amount: (low, high) => strength * between(low, high),
    drawing,
    pulls: [pull(), pull()],
    log: {},
    spoiled: false,
  };
  const kind = pattern[index % pattern.length]!;
  const first = causes[Math.floor(index / 2) % causes.length]!;
  const second =
    causes[(causes.indexOf(first) + 1 + Math.floor(random() * (causes.length - 1))) % causes.length]!;
  const planted = kind === 'unknown' ? [] : kind === 'one' ? [first] : [first, second];
  for (const cause of planted) plantCause(cause, planting);
  const unknown = kind === 'unknown' ? plantUnknown(settings.name, planting, seed) : null;
  return {
    seed,
    drawing,
    causes: planted,
    unknown,
    pulls: planting.pulls,
    log: logOf(planting, random() < settings.logKnown),
    photographSpoiled: planting.spoiled,
  };
}

/** A log tells what was done amiss, and in one line of twenty something that has nothing to do with the fault. */
function logOf({ log, random }: Planting, known: boolean): Features {
  if (!known) return {};
  return Object.fromEntries(
    logFeatures.map((name) => {
      const stray = random() < 0.05 ? (name === 'ungummedPause' ? 20 : 1) : 0;
      const value = log[name] ?? stray;
      return [name, { value, deviation: 0.05 + 0.05 * Math.abs(value), note: null }];
    }),
  );
}
