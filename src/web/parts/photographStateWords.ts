import type { PhotographState } from '../../records/attachedPhotograph.ts';

/** What a photograph shows, as one would say it beside the picture. */
export const photographStateWords: Readonly<Record<PhotographState, string>> = {
  grained: 'grained, bare',
  drawn: 'drawn',
  'washed-out': 'washed out',
  inked: 'inked, fanned dry',
  print: 'a print',
  level: 'raking light, for level',
  'set-up': 'the press as set up',
  other: 'something else',
};
