import type { LineStage, RunEvent } from '../../../records/run.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { pouredWords } from '../../../studio/bench/pouredWords.ts';
import { stagePast } from '../../../studio/bench/stagePast.ts';
import { clockOf } from './spanWords.ts';
import { noteWords } from './troubleKinds.ts';

/** What an event says in a line of the log. Places are named by `letterOf`. */
export function eventWords(event: RunEvent, letterOf: (place: string) => string): string {
  const named = ({ stage, words }: { readonly stage: LineStage; readonly words?: string | undefined }) =>
    told(lineRule(stage).name, words);
  switch (event.kind) {
    case 'laid':
    case 'moved':
    case 'lifted':
      return `${letterOf(event.payload.place)} ${event.kind}`;
    case 'buffed':
      return event.payload.round ? `round ${event.payload.round} buffed` : 'buffed';
    case 'trouble': {
      const { place, words } = event.payload;
      return place ? `trouble at ${letterOf(place)}: ${words}` : `trouble: ${words}`;
    }
    case 'stage-started':
      return `${named(event.payload)} begun`;
    case 'stage-ended':
      return told(stagePast[event.payload.stage], event.payload.words);
    case 'skipped':
      return `${named(event.payload)} skipped`;
    case 'repeated':
      return `${named(event.payload)} begun again`;
    case 'correction':
      return `correction: ${named(event.payload)}`;
    case 'gummed':
      return 'gummed';
    case 'gum-off':
      return 'gum taken off';
    case 'picked':
      return `${event.payload.tool}: ${event.payload.words}`;
    case 'remembered': {
      const { stage, place, seconds } = event.payload;
      const what = stage ? lineRule(stage).name : place ? letterOf(place) : 'something';
      return `${what} took about ${clockOf(seconds)}: remembered, not measured`;
    }
    case 'poured':
      return pouredWords(event.payload);
    case 'left':
      return 'left for the day';
    case 'undo':
      return 'the one before taken back';
    case 'note': {
      const said = noteWords(event);
      if (said === null) return 'a note';
      return said.about === 'trouble' ? `the trouble was: ${said.words}` : `note: ${said.words}`;
    }
    default:
      return event satisfies never;
  }
}

function told(what: string, words: string | undefined): string {
  return words ? `${what} (${words})` : what;
}
