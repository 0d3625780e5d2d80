import type { LineStage, RunEvent } from '../../../records/run.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { pouredWords } from '../../../studio/bench/pouredWords.ts';
import { stagePast } from '../../../studio/bench/stagePast.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { troubleAtStone } from './benchTaps.ts';
import { clockOf } from './spanWords.ts';
import { noteWords } from './troubleKinds.ts';

/** What an event says in a line of the log. Places are named by `letterOf`. */
export function eventWords(event: RunEvent, letterOf: (place: string) => string): string {
  const named = ({ stage, words }: { readonly stage: LineStage; readonly words?: string | undefined }) =>
    saidOr(told(lineRule(stage).name), words);
  switch (event.kind) {
    case 'laid':
    case 'moved':
    case 'lifted':
      return say('{place} {kind, select, laid {laid} moved {moved} other {lifted}}', {
        place: letterOf(event.payload.place),
        kind: event.kind,
      });
    case 'buffed':
      return event.payload.round
        ? say('round {round} buffed', { round: event.payload.round })
        : say('buffed');
    case 'trouble': {
      const { place, words } = event.payload;
      if (words === troubleAtStone) {
        return place ? say('trouble at {letterOf}', { letterOf: letterOf(place) }) : words;
      }
      return place
        ? say('trouble at {letterOf}: {words}', { letterOf: letterOf(place), words })
        : say('trouble: {words}', { words });
    }
    case 'stage-started':
      return say('{named} begun', { named: named(event.payload) });
    case 'stage-ended':
      return saidOr(told(stagePast[event.payload.stage]), event.payload.words);
    case 'skipped':
      return say('{named} skipped', { named: named(event.payload) });
    case 'repeated':
      return say('{named} begun again', { named: named(event.payload) });
    case 'correction':
      return say('correction: {named}', { named: named(event.payload) });
    case 'gummed':
      return say('gummed');
    case 'gum-off':
      return say('gum taken off');
    case 'picked':
      return `${event.payload.tool}: ${event.payload.words}`;
    case 'remembered': {
      const { stage, place, seconds } = event.payload;
      const what = stage ? told(lineRule(stage).name) : place ? letterOf(place) : say('something');
      return say('{what} took about {clockOf}: remembered, not measured', {
        what,
        clockOf: clockOf(seconds),
      });
    }
    case 'poured':
      return pouredWords(event.payload);
    case 'left':
      return say('left for the day');
    case 'undo':
      return say('the one before taken back');
    case 'note': {
      const said = noteWords(event);
      if (said === null) return say('a note');
      return said.about === 'trouble'
        ? say('the trouble was: {said}', { said: said.words })
        : say('note: {said}', { said: said.words });
    }
    default:
      return event satisfies never;
  }
}

function saidOr(what: string, words: string | undefined): string {
  return words ? `${what} (${words})` : what;
}
