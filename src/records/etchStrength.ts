/** The strengths of an etch, weakest first; `scant` is for media with little or no grease. */
export type EtchStrength = 'ground' | 'scant' | 'light' | 'middle' | 'dark';
