import type {
  HoldObservation,
  KnownHold,
  KnownHolds,
  KnownMedium,
  TableAdvice,
} from '../../../records/knownHolds.ts';
import { type Alike, alikeAmong, treatmentHold } from '../answer/holdShares.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { foundWords } from './foundWords.ts';
import { pooledBy, pooledShares } from './pooledShare.ts';

/** From so many stones on a share says more than luck: our rule. */
const someStones = 3;

/**
 * Media against etches over all stones, each stone counted as one as far as its places are alike: test stones and works alike.
 * @param adviceOf what the etch table says of a medium; null where it has no rule.
 */
export function knownHolds(
  observations: readonly HoldObservation[],
  adviceOf: (medium: string) => TableAdvice | null,
): KnownHolds {
  const rows = observations.map(asRow);
  const media = [...new Set(observations.map(({ medium }) => medium))].toSorted();
  const etches = [...new Set(observations.map(({ etch }) => etch))].toSorted();
  const cells = media.flatMap((medium) =>
    etches.map((etch) => rows.filter(({ levels }) => levels.medium === medium && levels.etch === etch)),
  );
  const alike = alikeAmong(cells.filter((own) => own.length > 0));
  return {
    schema: 'stonetone/known-holds/1',
    etches,
    media: media.map((medium) => knownMedium(medium, etches, rows, observations, alike, adviceOf(medium))),
    stones: new Set(observations.map(({ stone }) => stone)).size,
    alike,
    pooledBy,
  };
}

function knownMedium(
  medium: string,
  etches: readonly string[],
  rows: readonly TrialPatchRow[],
  observations: readonly HoldObservation[],
  alike: Alike,
  advice: TableAdvice | null,
): KnownMedium {
  const found = etches.flatMap((etch) => {
    const own = rows.filter(({ levels }) => levels.medium === medium && levels.etch === etch);
    const { share, verdict, counts } = treatmentHold(own, { medium, etch }, alike);
    return share ? [{ etch, share, verdict, counts }] : [];
  });
  const pooled = pooledShares(
    found.map(({ share: { value, counted } }) => ({ hits: value * counted, counted })),
  );
  const holds = found.map(({ etch, share, verdict, counts }, index): KnownHold => {
    const seen = observations.filter((one) => one.medium === medium && one.etch === etch);
    const stonesFrom = (from: HoldObservation['from']) =>
      new Set(seen.filter((one) => one.from === from).map(({ stone }) => stone)).size;
    const stones = new Set(seen.map(({ stone }) => stone)).size;
    return {
      etch,
      share,
      verdict,
      certainty:
        verdict === 'holds' || verdict === 'fails' ? 'sure' : stones >= someStones ? 'some' : 'little',
      counts,
      testStones: stonesFrom('test-stone'),
      works: stonesFrom('work'),
      ...pooled[index]!,
    };
  });
  return { medium, holds, advice, found: foundWords(medium, holds, advice) };
}

function asRow({ stone, strip, medium, etch, hold }: HoldObservation, index: number): TrialPatchRow {
  const place = `${stone} ${index}`;
  return {
    stone,
    patch: place,
    name: place,
    units: { stone, strip: `${stone} strip ${strip}`, square: place, patch: place },
    levels: { medium, etch },
    centreMm: [0, 0],
    sizeMm: [0, 0],
    hold,
    printed: null,
    drawn: null,
    control: false,
  };
}
