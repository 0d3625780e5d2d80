import type { ComparisonSummary, MeasuringStage } from '../../records/comparisonEntry.ts';
import { localText } from '../managers/localMoment.ts';
import { dayAndTimeOf } from '../words/moments.ts';
import { say } from '../words/say.ts';

/** The stages of a measurement, in order. */
export const stages: readonly MeasuringStage[] = ['reading', 'matching', 'light', 'tones', 'maps', 'sheets'];

/** What is being done in a stage. */
export const stageWords: Readonly<Record<MeasuringStage, string>> = {
  reading: say('Reading the photographs'),
  matching: say('Laying the print on the stone'),
  light: say('Finding the bare ground and the light'),
  tones: say('Measuring the tones'),
  maps: say('Mapping what was lost and what filled in'),
  sheets: say('Drawing the sheet to pin up'),
};

/** Where a comparison without a finding stands. */
export function stateWords({ state, progress }: Pick<ComparisonSummary, 'state' | 'progress'>): string {
  switch (state) {
    case 'waiting':
      return say('Waiting for its turn');
    case 'measuring':
      return progress ? stageWords[progress.stage] : say('Being measured');
    case 'measured':
      return say('Measured');
    case 'refused':
      return say('Could not be compared');
    case 'not-done':
      return say('The measurement stopped');
    case 'stopped':
      return say('Stopped before it was measured');
    default: {
      const unheard: never = state;
      return unheard;
    }
  }
}

/** A moment (ISO, any zone) as a day and time where the reader is: `26 Nov 2026, 17:40`. */
export function dayWords(iso: string): string {
  return dayAndTimeOf(localText(iso));
}
