/** Cells of a wash with the class that each belongs to; −1 is outside. */
export interface ClassGrid {
  readonly classes: Int8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A connected place of one class. */
interface Place {
  class: number;
  cells: number[];
  /** Shared sides with each neighbouring place, by its number. */
  readonly edges: Map<number, number>;
}

/**
 * Gives every connected place of fewer cells than the smallest to the neighbour with which it shares most sides
 * (the lower class where two share alike), smallest first, until none is left that has a neighbour.
 * Neighbours share a side, not a corner. Changes `classes` in place.
 * @returns how many places changed their class.
 */
export function mergeSmallPlaces(grid: ClassGrid, smallestCells: number): number {
  const places = placesOf(grid);
  let changed = 0;
  for (;;) {
    const small = [...places]
      .filter(([, place]) => place.cells.length < smallestCells && place.edges.size > 0)
      .map(([number, place]) => ({ number, size: place.cells.length }))
      .sort((a, b) => a.size - b.size || a.number - b.number);
    if (small.length === 0) return changed;
    for (const { number, size } of small) {
      // A place that has grown or gone since the list was made waits for the next one.
      const place = places.get(number);
      if (place?.cells.length !== size || place.edges.size === 0) continue;
      mergeInto(grid, places, number, bestNeighbour(places, place));
      changed++;
    }
  }
}

function bestNeighbour(places: ReadonlyMap<number, Place>, place: Place): number {
  const [best] = [...place.edges].sort(
    ([a, sidesA], [b, sidesB]) => sidesB - sidesA || places.get(a)!.class - places.get(b)!.class || a - b,
  );
  return best![0];
}

/** Joins a place to another, and to all further neighbours of that one's class which it connected. */
function mergeInto(grid: ClassGrid, places: Map<number, Place>, from: number, to: number): void {
  const target = places.get(to)!;
  for (const cell of places.get(from)!.cells) grid.classes[cell] = target.class;
  absorb(places, from, to);
  for (const neighbour of [...target.edges.keys()]) {
    if (places.get(neighbour)!.class === target.class) absorb(places, neighbour, to);
  }
}

function absorb(places: Map<number, Place>, from: number, to: number): void {
  const gone = places.get(from)!;
  const target = places.get(to)!;
  places.delete(from);
  target.cells = target.cells.concat(gone.cells);
  target.edges.delete(from);
  for (const [neighbour, sides] of gone.edges) {
    if (neighbour === to) continue;
    target.edges.set(neighbour, (target.edges.get(neighbour) ?? 0) + sides);
    const other = places.get(neighbour)!;
    other.edges.delete(from);
    other.edges.set(to, target.edges.get(neighbour)!);
  }
}

function placesOf({ classes, widthPx, heightPx }: ClassGrid): Map<number, Place> {
  const numbers = new Int32Array(classes.length).fill(-1);
  const places = new Map<number, Place>();
  for (let start = 0; start < classes.length; start++) {
    if (classes[start]! < 0 || numbers[start]! >= 0) continue;
    const cells = [start];
    numbers[start] = start;
    for (let next = 0; next < cells.length; next++) {
      for (const neighbour of besides(cells[next]!, widthPx, heightPx)) {
        if (numbers[neighbour]! >= 0 || classes[neighbour] !== classes[start]) continue;
        numbers[neighbour] = start;
        cells.push(neighbour);
      }
    }
    places.set(start, { class: classes[start]!, cells, edges: new Map() });
  }
  for (const [number, place] of places) {
    for (const cell of place.cells) {
      for (const neighbour of besides(cell, widthPx, heightPx)) {
        const other = numbers[neighbour]!;
        if (other >= 0 && other !== number) place.edges.set(other, (place.edges.get(other) ?? 0) + 1);
      }
    }
  }
  return places;
}

function besides(cell: number, widthPx: number, heightPx: number): number[] {
  const x = cell % widthPx;
  const found: number[] = [];
  if (x > 0) found.push(cell - 1);
  if (x < widthPx - 1) found.push(cell + 1);
  if (cell >= widthPx) found.push(cell - widthPx);
  if (cell < widthPx * (heightPx - 1)) found.push(cell + widthPx);
  return found;
}
