import type { CSSProperties } from 'react';

/** Faces of stones, by the word that stands first in the trade's name for the colour; paler ones are softer stones. */
const faces: readonly (readonly [word: string, face: string])[] = [
  ['yellow', '#d9c9a0'],
  ['light grey', '#c6c3b8'],
  ['pale grey', '#c6c3b8'],
  ['dark grey', '#9c9a94'],
  ['blue', '#a3a9ab'],
  ['grey', '#b4b2aa'],
  ['gray', '#b4b2aa'],
  ['gelb', '#d9c9a0'],
  ['hellgrau', '#c6c3b8'],
  ['blassgrau', '#c6c3b8'],
  ['dunkelgrau', '#9c9a94'],
  ['blau', '#a3a9ab'],
  ['grau', '#b4b2aa'],
];

/**
 * The face of a stone tinted a little after its colour in words, for pictures only: the word itself always stands
 * near. Words that are not known leave the stone as it is.
 */
export function stoneTint(colour: string): CSSProperties {
  const face = faces.find(([word]) => colour.toLowerCase().includes(word))?.[1];
  if (!face) return {};
  return {
    '--stone': face,
    '--stone-top': `color-mix(in srgb, ${face}, #fff 34%)`,
    '--stone-side': `color-mix(in srgb, ${face}, #1a1714 26%)`,
  } as CSSProperties;
}
