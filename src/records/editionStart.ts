import type { Measured } from '../foundation/measured.ts';
import type { ToneReading } from './edition.ts';

/** A value that an edition may start from, and what it was taken from, in a sentence. */
export interface StartingValue<Value> {
  readonly value: Value;
  readonly from: string;
}

/** What the pull that is good to print, the kit and the drawing say of an edition before anybody types; null: nothing does. */
export interface EditionStart {
  /** The pull that is good to print; null: none is. */
  readonly pull: { readonly id: string; readonly number: number } | null;
  readonly paperName: StartingValue<string> | null;
  readonly gramsPerM2: StartingValue<number> | null;
  readonly damped: StartingValue<'yes' | 'no'> | null;
  readonly ink: StartingValue<string> | null;
  /** Area that carries ink, as if every place were covered whole, cm². */
  readonly inkedCm2: StartingValue<Measured> | null;
  readonly approvedBy: StartingValue<string> | null;
  /** Only where it was told by eye: what was photographed is read itself. */
  readonly approval: StartingValue<ToneReading> | null;
}
