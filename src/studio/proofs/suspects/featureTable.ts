import type { FeatureName } from '../../../records/suspects.ts';

/** How a feature is told, and from where on it counts as seen. */
export interface FeatureRow {
  /** What is seen where it is there. */
  readonly seen: string;
  /** The same where it is not. */
  readonly absent: string;
  /** Half seen at this value. Common practice, no source. */
  readonly from: number;
  /** How gradually it comes to be seen: a standard deviation beside the reading's own. */
  readonly soft: number;
  /** The picture or page that shows it. */
  readonly see: string | null;
}

const row = (seen: string, absent: string, from: number, soft: number, see: string | null): FeatureRow => ({
  seen,
  absent,
  from,
  soft,
  see,
});

/** What the features are called and where they begin. Shares are of a tone unless said otherwise; change is in coverage. */
export const featureTable: Readonly<Record<FeatureName, FeatureRow>> = {
  lightsLow: row(
    'the lights are low wherever they lie',
    'the lights are not low everywhere',
    0.35,
    0.08,
    'curve.svg',
  ),
  lightsLostInPatches: row(
    'lights are lost in patches',
    'no lights are lost in patches',
    0.07,
    0.025,
    'lost.png',
  ),
  wholeTonesGone: row(
    'middles and darks are gone in patches',
    'no middles or darks are gone',
    0.03,
    0.012,
    'lost.png',
  ),
  paleSoftPatch: row(
    'a patch of any tone is paler without being gone',
    'no patch is merely paler',
    0.03,
    0.01,
    'overlay.png',
  ),
  darksClosed: row('the darks lost their whites', 'the darks stay open', 0.3, 0.06, 'curve.svg'),
  middlesGain: row('the middles came up too', 'the middles print as usual', 0.11, 0.02, 'curve.svg'),
  gradientAlong: row(
    'the print grows darker along the travel',
    'no slope along the travel',
    0.13,
    0.03,
    'proof.jpg',
  ),
  gradientAcross: row(
    'the print grows darker across the travel',
    'no slope across the travel',
    0.13,
    0.03,
    'proof.jpg',
  ),
  streakAlong: row(
    'a narrow line runs along the travel',
    'no line runs along the travel',
    0.05,
    0.02,
    'proof.jpg',
  ),
  streakDarker: row(
    'the line along the travel is darker than what lies beside it',
    'no line along the travel is darker than what lies beside it',
    0.05,
    0.02,
    'proof.jpg',
  ),
  bandsRepeat: row('bands come again at an even distance', 'no bands come again', 0.018, 0.006, 'proof.jpg'),
  bandOnce: row(
    'a single band lies across the travel',
    'no single band lies across',
    0.016,
    0.006,
    'proof.jpg',
  ),
  ghostRepeat: row(
    'the drawing comes again further on, faintly',
    'nothing of the drawing comes again',
    0.013,
    0.006,
    'overlay.png',
  ),
  ghostExplains: row(
    'what bare stone prints is the drawing come again, over and over',
    'the drawing come again does not account for what bare stone prints',
    0.32,
    0.08,
    'overlay.png',
  ),
  secondEdge: row('edges have a second edge to one side', 'edges are single', 0.11, 0.03, 'proof.jpg'),
  smear: row(
    'what lies beside the edges lies along the travel',
    'nothing is drawn out along the travel',
    0.11,
    0.03,
    'proof.jpg',
  ),
  borderGrey: row(
    'the border prints grey, the middle does not',
    'the border is as clean as the middle',
    0.025,
    0.008,
    'scum.png',
  ),
  bareGrey: row('bare stone prints grey', 'bare stone prints clean', 0.025, 0.008, 'scum.png'),
  bareShapes: row(
    'shapes show on bare stone that were not drawn',
    'bare stone is even',
    0.03,
    0.01,
    'scum.png',
  ),
  haloBesideDarks: row(
    'lighter work is pale beside darks',
    'lighter work holds beside darks',
    0.1,
    0.03,
    'overlay.png',
  ),
  tailsOffDarks: row(
    'bare stone prints on one side of darks',
    'darks have no tails',
    0.02,
    0.006,
    'scum.png',
  ),
  paleSpots: row('there are small pale spots', 'there are no spots', 3, 0.8, 'proof.jpg'),
  zoneBlank: row('a zone is gone whole', 'no zone is gone whole', 0.5, 0.1, 'lost.png'),
  stopOutPrints: row('a stop-out prints', 'stop-outs stay bare', 0.5, 0.1, 'scum.png'),
  printPale: row(
    'the solid on the print is weak',
    'the solid on the print is as strong as usual',
    0.16,
    0.04,
    'ladder.svg',
  ),
  stonePale: row(
    'the solid on the stone is weak too',
    'the solid on the stone is as strong as usual',
    0.16,
    0.04,
    'ladder.svg',
  ),
  photographDoubt: row(
    'the photographs are doubtful',
    'nothing is wrong with the photographs',
    0.5,
    0.1,
    'comparison.json',
  ),
  otherStructure: row(
    'the print is uneven in a way that no other sign describes',
    'the print is even otherwise',
    0.085,
    0.02,
    'overlay.png',
  ),
  unevenAllOver: row(
    'middles and darks are uneven all over the sheet',
    'unevenness keeps to places, lines or tones',
    0.05,
    0.012,
    'overlay.png',
  ),
  patchesStay: row(
    'what is missing is missing at the same place again',
    'what is missing moves',
    0.6,
    0.12,
    'lost.png',
  ),
  lightsReturn: row('lights come back from pull to pull', 'lights do not come back', 0.1, 0.03, 'series'),
  bareGrows: row('the grey grows from pull to pull', 'the grey does not grow', 0.012, 0.005, 'series'),
  darksGrow: row('the darks grow from pull to pull', 'the darks do not grow', 0.02, 0.008, 'series'),
  missingGrows: row(
    'more is missing from pull to pull',
    'what is missing does not grow',
    0.015,
    0.006,
    'series',
  ),
  etchOverrun: row('an etch lay longer than planned', 'no etch lay too long', 0.25, 0.08, 'log'),
  etchShort: row('an etch lay shorter than planned', 'no etch lay too short', 0.25, 0.08, 'log'),
  baseSkipped: row('the base was skipped', 'the base was laid', 0.5, 0.1, 'log'),
  powderSkipped: row('the powder was skipped', 'the stone was powdered', 0.5, 0.1, 'log'),
  borderSkipped: row('the border was not gummed', 'the border was gummed', 0.5, 0.1, 'log'),
  rollUpShort: row('the roll-up was short', 'the roll-up took its time', 0.25, 0.08, 'log'),
  ungummedPause: row('the stone stood open, ungummed', 'the stone was gummed in every pause', 5, 3, 'log'),
};
