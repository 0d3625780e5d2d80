import type { PhotographState } from '../../records/attachedPhotograph.ts';
import { say } from '../words/say.ts';

/** What a photograph shows, as one would say it beside the picture. */
export const photographStateWords: Readonly<Record<PhotographState, string>> = {
  grained: say('grained, bare'),
  drawn: say('drawn'),
  'washed-out': say('washed out'),
  inked: say('inked, fanned dry'),
  print: say('a print'),
  level: say('raking light, for level'),
  'set-up': say('the press as set up'),
  other: say('something else'),
};
