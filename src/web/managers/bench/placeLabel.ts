/** What a place is called on the stone, and how large, mm. */
export interface PlaceLabel {
  readonly words: string;
  readonly size: number;
  readonly wide: number;
  readonly high: number;
}

/** Of its own size: the height of a label, and what a letter and the edges of it take in width. */
const [tall, perLetter, edges] = [1.04, 0.46, 0.3];
/** In parts of the stone, the least size at which a time is still read, and that of a letter. */
const [leastTime, leastLetter] = [7, 5];

/**
 * A label that stays within its own place, as large as the room allows; where that is too little for the time, the
 * letter alone.
 * @param room mm from the label's middle to the nearest edge of the place
 * @param unit a part of the stone, mm
 * @param most parts of the stone, the largest size
 */
export function placeLabel(
  letter: string,
  time: string,
  { room, unit, most }: { readonly room: number; readonly unit: number; readonly most: number },
): PlaceLabel {
  const widthOf = (words: string) => words.length * perLetter + edges;
  const fits = (words: string) => (2 * room) / Math.hypot(widthOf(words), tall);
  const words = fits(letter + time) < leastTime * unit ? letter : letter + time;
  const size = Math.min(most * unit, Math.max(leastLetter * unit, fits(words)));
  return { words, size, wide: widthOf(words) * size, high: tall * size };
}
