import type { Random } from '../../src/foundation/random.ts';
import type { LogFeature } from '../../src/records/suspects.ts';
import type { Drawing } from '../../src/sample/render/drawing.ts';
import type { Fault } from '../../src/sample/render/faults/fault.ts';
import type { Damage, ToneTransfer } from '../../src/sample/render/printing.ts';

/** What a planter works on. */
export interface Planting {
  readonly random: Random;
  /** A number between bounds, times this case's strength. */
  amount(low: number, high: number): number;
  between(low: number, high: number): number;
  readonly drawing: Drawing;
  readonly pulls: readonly [PlantedPull, PlantedPull];
  /** Log features that the cause leaves, where the log was kept. */
  readonly log: Partial<Record<LogFeature, number>>;
  spoiled: boolean;
}

/** What one pull of a simulated case is printed with. */
export interface PlantedPull {
  transfer: ToneTransfer;
  zoneTransfers: Record<string, ToneTransfer>;
  damage: Damage;
  faults: Fault[];
  /** Density that the solid lacks. */
  weakPrint: number;
  weakStone: number;
}
