/** Every file that a comparison may write. A refused one writes fewer, so the others of an earlier one must go. */
export const comparisonFileNames: readonly string[] = [
  'comparison.json',
  'evidence.json',
  'sheet.pdf',
  'ladder.svg',
  'curve.svg',
  'stone.jpg',
  'proof.jpg',
  'overlay.png',
  'lost.png',
  'filled.png',
  'scum.png',
  'sheet.png',
];
