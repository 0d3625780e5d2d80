import type { EyeTones, PickedThing, PullDraft, PullKind } from '../../../records/pull.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { newClientId } from '../bench/clientIds.ts';
import type { TypedChip } from '../chipBoxes.ts';
import { heldIdOf } from '../held/heldName.ts';
import { chipsBefore, keptChips } from './pullChips.ts';

/** A photograph taken for a pull that is not kept yet. */
export interface TakenPhotograph {
  /** Id of a kept photograph, or the name of one that is held here until it is sent (`heldName`). */
  readonly photograph: string;
  readonly takenAt: string;
  /** Where the stone's corners came to lie; null: they are looked for when it is measured. */
  readonly corners: Corners | null;
  /** Grey chips on it; left out: none were set. */
  readonly chips?: readonly TypedChip[];
}

/** A pull while it is being entered. Plain data: it outlives a reload. */
export interface PullTyped {
  /** Made here: the server keeps the pull once under it, however often it is sent. */
  readonly id: string;
  readonly number: number;
  readonly kind: PullKind;
  /** By photograph, by eye, or not read at all; null until that is chosen. */
  readonly way: 'camera' | 'eye' | 'none' | null;
  readonly photographs: readonly TakenPhotograph[];
  /** Whether grey chips lie beside the print on its photographs. */
  readonly chipped: boolean;
  readonly eye: Pick<EyeTones, 'lights' | 'middles' | 'darks'>;
  readonly ageMinutes: number | null;
  readonly paper: PickedThing | null;
  readonly damp: boolean | null;
  readonly ink: PickedThing | null;
  readonly roller: PickedThing | null;
  readonly charges: number | null;
  readonly passes: number | null;
  readonly pressureEighths: number | null;
  readonly packing: string | null;
  readonly who: string | null;
  readonly remarks: string;
  readonly fault: string;
}

/** What is asked for, one at a time. */
export const pullSteps = [
  'number',
  'photograph',
  'marks',
  'chips',
  'again',
  'marks-again',
  'chips-again',
  'lights',
  'middles',
  'darks',
  'age',
  'paper',
  'ink',
  'rolling',
  'press',
  'who',
  'remarks',
] as const;
export type PullStep = (typeof pullSteps)[number];

/**
 * The steps that this pull asks for, in order: some only by photograph, some only by eye. Marks and chips are set on a
 * photograph that is sent; one that is not waits for them.
 * @param markable whether the work has a rectangle whose corners a person can find on a print.
 * @param askTwice whether a second photograph of the sheet is asked for: until σ of this room is known.
 */
export function stepsOf(
  { way, photographs, chipped }: Pick<PullTyped, 'way' | 'photographs' | 'chipped'>,
  markable: boolean,
  askTwice: boolean,
): readonly PullStep[] {
  const shows = (index: number) => {
    const taken = photographs[index];
    return way === 'camera' && taken !== undefined && heldIdOf(taken.photograph) === null;
  };
  return pullSteps.filter((step) => {
    switch (step) {
      case 'marks':
        return markable && shows(0);
      case 'chips':
        return chipped && shows(0);
      case 'chips-again':
        return chipped && shows(1);
      case 'again':
        return way === 'camera' && photographs.length > (askTwice ? 0 : 1);
      case 'marks-again':
        return markable && shows(1);
      case 'lights':
      case 'middles':
      case 'darks':
        return way === 'eye';
      case 'age':
        return way === 'camera' || way === 'eye';
      default:
        return true;
    }
  });
}

/** The next pull of a work: its number, and all that was used last, to be taken on or changed by a touch. */
export function nextPull(pulls: readonly PullDraft[]): PullTyped {
  const last = pulls.at(-1) ?? null;
  const kind = last === null ? 'trial-proof' : last.kind;
  return {
    id: newClientId(),
    number: (last?.number ?? 0) + 1,
    kind,
    way: null,
    photographs: [],
    chipped: chipsBefore(pulls).length > 0,
    eye: { lights: null, middles: null, darks: null },
    ageMinutes: null,
    paper: last?.paper ?? null,
    damp: last?.damp ?? null,
    ink: last?.ink ?? null,
    roller: last?.roller ?? null,
    charges: last?.charges ?? null,
    passes: last?.passes ?? null,
    pressureEighths: last?.pressureEighths ?? null,
    packing: last?.packing ?? null,
    who: last?.who ?? null,
    remarks: '',
    fault: '',
  };
}

/**
 * The pull to be kept. Its age counts from the first photograph: what was pulled so many minutes before that is as old.
 * @param now ISO, for a pull told by eye.
 * @returns null while it has no paper: that alone is needed beside the number.
 */
export function draftOfTyped(typed: PullTyped, now: string): PullDraft | null {
  if (typed.paper === null) return null;
  const { way, ageMinutes, photographs } = typed;
  const seenAt = way === 'camera' ? (photographs[0]?.takenAt ?? now) : now;
  const known = way !== 'none' && way !== null && ageMinutes !== null;
  const madeAt = known ? new Date(Date.parse(seenAt) - ageMinutes * 60_000).toISOString() : null;
  const { lights, middles, darks } = typed.eye;
  const told = way === 'eye' && [lights, middles, darks].some((tone) => tone !== null);
  return {
    number: typed.number,
    kind: typed.kind,
    paper: typed.paper,
    damp: typed.damp,
    madeAt,
    ink: typed.ink,
    charges: typed.charges,
    passes: typed.passes,
    pressureEighths: typed.pressureEighths,
    packing: typed.packing,
    roller: typed.roller,
    who: typed.who,
    photographs:
      way === 'camera'
        ? photographs.map(({ photograph, takenAt, corners, chips = [] }) => ({
            photograph,
            takenAt,
            ageMinutes: known ? ageMinutes : null,
            corners,
            chips: typed.chipped ? keptChips(chips) : [],
          }))
        : [],
    eye: told
      ? { lights, middles, darks, ageMinutes: known ? ageMinutes : null, who: typed.who ?? '' }
      : null,
    faults: typed.fault.trim() === '' ? [] : [{ words: typed.fault.trim(), closed: null }],
    remarks: typed.remarks.trim(),
  };
}

/** What was used for the pulls of a work, each once, what was used last first. */
export function usedBefore<Thing>(
  pulls: readonly PullDraft[],
  of: (pull: PullDraft) => Thing | null,
  nameOf: (thing: Thing) => string,
): readonly Thing[] {
  const found = new Map<string, Thing>();
  for (const pull of pulls.toReversed()) {
    const thing = of(pull);
    if (thing !== null && !found.has(nameOf(thing))) found.set(nameOf(thing), thing);
  }
  return [...found.values()];
}
