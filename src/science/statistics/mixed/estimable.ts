/** What of a vector is left beside others, as a share of its length, that counts as nothing: what rounding leaves. */
const nothing = 1e-9;

/**
 * The columns of a design that say what no column before them says, in their order. The others' coefficients may be held at 0: no
 * sum of coefficients that the design can tell changes by that.
 * @param rows of one length, at least one.
 */
export function independentColumns(rows: readonly (readonly number[])[]): number[] {
  const distinct = distinctRows(rows);
  const basis: number[][] = [];
  return rows[0]!
    .map((_, k) => k)
    .filter((k) => {
      const left = beside(
        distinct.map((row) => row[k]!),
        basis,
      );
      if (left) basis.push(left);
      return left !== null;
    });
}

/**
 * Tells of a sum of coefficients whether a design can tell it at all: whether its weights are a sum of the design's rows.
 * Searle, S. R. (1971), Linear Models, section 5.4 (from memory): estimable functions.
 * @param rows of one length, at least one.
 */
export function estimableBy(rows: readonly (readonly number[])[]): (weights: readonly number[]) => boolean {
  const basis: number[][] = [];
  for (const row of distinctRows(rows)) {
    const left = beside(row, basis);
    if (left) basis.push(left);
  }
  return (weights) => beside(weights, basis) === null;
}

/** Sets of items of which any two are alike; `alike` must be an equivalence. */
export function setsOf<Item>(items: readonly Item[], alike: (one: Item, other: Item) => boolean): Item[][] {
  const sets: Item[][] = [];
  for (const item of items) {
    const own = sets.find(([first]) => alike(first!, item));
    if (own) own.push(item);
    else sets.push([item]);
  }
  return sets;
}

function distinctRows(rows: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return [...new Map(rows.map((row) => [row.join(), row])).values()];
}

/** What of a vector stands apart from an orthonormal basis, of length 1; null where nothing does. */
function beside(vector: readonly number[], basis: readonly (readonly number[])[]): number[] | null {
  const whole = lengthOf(vector);
  if (whole === 0) return null;
  let left = vector.map((value) => value / whole);
  // Twice, as once leaves what rounding made of it.
  for (let round = 0; round < 2; round++)
    for (const one of basis) {
      const share = one.reduce((sum, value, k) => sum + value * left[k]!, 0);
      left = left.map((value, k) => value - share * one[k]!);
    }
  const rest = lengthOf(left);
  return rest <= nothing ? null : left.map((value) => value / rest);
}

function lengthOf(vector: readonly number[]): number {
  return Math.sqrt(vector.reduce((sum, value) => sum + value * value, 0));
}
