import type {
  ComparisonEntry,
  ComparisonRequest,
  ComparisonSide,
  PhotographEntry,
} from '../../records/comparisonEntry.ts';
import type { Chip, Zone } from '../../records/zone.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { say } from '../words/say.ts';
import { cornerTrouble, foundOnPrint } from './cornerMarks.ts';

export type SideName = 'stone' | 'proof';
export type PhotographPlace = 'photograph' | 'repeat' | 'flat';

/** One side of a comparison while it is being set up. */
export interface DraftSide {
  readonly photograph: PhotographEntry | null;
  readonly corners: Corners | null;
  /** Who set the corners last. */
  readonly setBy: 'nobody' | 'tool' | 'hand';
  readonly repeat: PhotographEntry | null;
  readonly flat: PhotographEntry | null;
}

/** Everything entered for a comparison that is not measured yet, as typed. Plain data: it outlives a reload. */
export interface Draft {
  readonly title: string;
  readonly width: string;
  readonly height: string;
  readonly stone: DraftSide;
  readonly proof: DraftSide;
  readonly zones: { readonly fileName: string; readonly zones: readonly Zone[] } | null;
  readonly chips: { readonly fileName: string; readonly chips: readonly Chip[] } | null;
}

const emptySide: DraftSide = { photograph: null, corners: null, setBy: 'nobody', repeat: null, flat: null };

export const emptyDraft: Draft = {
  title: '',
  width: '',
  height: '',
  stone: emptySide,
  proof: emptySide,
  zones: null,
  chips: null,
};

/** Puts a photograph (or takes it away) at one place of a side; another main photograph drops the corners of the last. */
export function withPhotograph(
  draft: Draft,
  side: SideName,
  place: PhotographPlace,
  photograph: PhotographEntry | null,
): Draft {
  const dropped = place === 'photograph' ? { corners: null, setBy: 'nobody' as const } : {};
  return { ...draft, [side]: { ...draft[side], ...dropped, [place]: photograph } };
}

/** Sets the corners of one side. */
export function withCorners(
  draft: Draft,
  side: SideName,
  corners: Corners,
  setBy: DraftSide['setBy'],
): Draft {
  return { ...draft, [side]: { ...draft[side], corners, setBy } };
}

/** Puts what the tool found on a photograph in this side's order; see `foundOnPrint`. */
export function foundOrder(side: SideName, asSeen: Corners, letter: boolean): Corners {
  return side === 'stone' ? asSeen : foundOnPrint(asSeen, letter);
}

/** A length in mm as typed (comma or point); null when it is none, or outside 10 to 3000 mm. */
export function typedMm(text: string): number | null {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && value >= 10 && value <= 3000 ? value : null;
}

/** The parts of a draft; see `missingPart`. */
export type MissingPart = 'photographs' | 'stone-corners' | 'proof-corners' | 'size';

/** What is still missing, first things first; corners that cross or lie on a line count as not set. */
export function missingPart(draft: Draft): MissingPart | null {
  if (!draft.stone.photograph || !draft.proof.photograph) return 'photographs';
  if (!areSet(draft.stone.corners)) return 'stone-corners';
  if (!areSet(draft.proof.corners)) return 'proof-corners';
  return typedMm(draft.width) === null || typedMm(draft.height) === null ? 'size' : null;
}

function areSet(corners: Corners | null): boolean {
  return corners !== null && cornerTrouble(corners) === null;
}

/** The request that a complete draft stands for; null while something is missing. */
export function draftRequest(draft: Draft): ComparisonRequest | null {
  const [width, height] = [typedMm(draft.width), typedMm(draft.height)];
  const stone = requestSide(draft.stone);
  const proof = requestSide(draft.proof);
  if (width === null || height === null || !stone || !proof) return null;
  return {
    title: draft.title.trim() || titleFromFile(draft.stone.photograph?.fileName ?? ''),
    sizeMm: [width, height],
    stone,
    proof,
    zones: draft.zones?.zones ?? [],
    chips: draft.chips?.chips ?? [],
  };
}

/** A title for those who gave none: the stone photograph's name without its ending. */
export function titleFromFile(fileName: string): string {
  return (
    fileName
      .replace(/\.[a-z0-9]{2,5}$/i, '')
      .replace(/[_-]+/g, ' ')
      .trim() || say('Not named yet')
  );
}

/** A draft that holds what an earlier comparison was made from, to set it up anew. Photographs as looked up by id. */
export function draftFromEntry(
  entry: ComparisonEntry,
  photographs: ReadonlyMap<string, PhotographEntry>,
): Draft {
  const side = (from: ComparisonSide): DraftSide => {
    const held = (id: string | null) => (id === null ? null : (photographs.get(id) ?? null));
    const corners = from.corners;
    return {
      photograph: held(from.photograph),
      corners,
      setBy: corners ? 'hand' : 'nobody',
      repeat: held(from.repeat),
      flat: held(from.flat),
    };
  };
  const { request } = entry;
  return {
    title: request.title,
    width: String(request.sizeMm[0]),
    height: String(request.sizeMm[1]),
    stone: side(request.stone),
    proof: side(request.proof),
    zones: request.zones.length > 0 ? { fileName: say('zones as before'), zones: request.zones } : null,
    chips: request.chips.length > 0 ? { fileName: say('chips as before'), chips: request.chips } : null,
  };
}

function requestSide(side: DraftSide): ComparisonSide | null {
  if (!side.photograph) return null;
  return {
    photograph: side.photograph.id,
    corners: side.corners,
    repeat: side.repeat?.id ?? null,
    flat: side.flat?.id ?? null,
  };
}
