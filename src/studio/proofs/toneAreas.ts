import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { Work, WorkZone } from '../../records/work.ts';
import type { SeriesSettings, ToneArea } from '../../records/workSeries.ts';

/** Where a tone was measured or judged, it decides for a wash and for zones without a deposit: our rule. */
const lightBelow = 0.25;
const middleBelow = 0.6;

/**
 * The zones that stand for lights, middles and darks until the artist chooses others: by deposit; a wash and a zone
 * without deposit by its mean tone. What is not meant to print is left out.
 */
export function toneAreas({ zones }: Pick<Work, 'zones'>): SeriesSettings['areas'] {
  const areaOf = (tone: SeriesTone): ToneArea => {
    const own = zones.filter((zone) => toneOfZone(zone) === tone);
    return {
      origin: 'zones',
      zones: own.map(({ id }) => id),
      polygonsMm: own.map(({ polygonMm }) => polygonMm),
    };
  };
  const [lights, middles, darks] = seriesTones.map(areaOf) as [ToneArea, ToneArea, ToneArea];
  return { lights, middles, darks };
}

/** The tones that nothing stands for, neither a zone nor a place drawn by hand. */
export function unplacedTones(areas: SeriesSettings['areas']): readonly SeriesTone[] {
  return seriesTones.filter((tone) => areas[tone].polygonsMm.length === 0);
}

function toneOfZone({ deposit, intention, tone }: WorkZone): SeriesTone | null {
  if (intention !== undefined && intention !== 'drawn') return null;
  switch (deposit) {
    case 'light':
      return 'lights';
    case 'middle':
      return 'middles';
    case 'dark':
    case 'solid':
      return 'darks';
    case 'wash':
    case undefined:
      if (tone === null) return null;
      return tone.mean < lightBelow ? 'lights' : tone.mean < middleBelow ? 'middles' : 'darks';
    default:
      return deposit satisfies never;
  }
}
