/** Raised whenever the same photographs could give other readings of patches, though comparisons stay as they are. */
export const patchReadingVersion = 1;
