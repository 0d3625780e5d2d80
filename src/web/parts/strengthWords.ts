import type { EtchStrength } from '../../records/etchStrength.ts';
import { say } from '../words/say.ts';

/** The strengths, weakest first. */
export const etchStrengths: readonly EtchStrength[] = ['ground', 'scant', 'light', 'middle', 'dark'];

/** What is drawn where each strength is laid; common practice, no source. */
export const strengthFor: Readonly<Record<EtchStrength, string>> = {
  ground: say('bare stone, stop-out, scraped white'),
  scant: say('graphite and media with little or no grease'),
  light: say('crayon #4 #5, thin wash, light rubbing'),
  middle: say('crayon #2 #3, middle wash, rubbing ink, autographic line'),
  dark: say('crayon #1 0 00, solids, dense wash, waxy pencil'),
};
