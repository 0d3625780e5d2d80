/** Names that can be compared with each other. */
export interface ComparableSet {
  readonly names: readonly string[];
  /** What they came with. */
  readonly partners: readonly string[];
}

/**
 * Which levels of one thing can be compared free of another: those that are tied through shared levels of it, link by link.
 * More than one set: between sets nothing tells the two things apart.
 * Weeks, D. L. & Williams, D. R. (1964), A note on the determination of connectedness in an N-way cross classification,
 * Technometrics 6, 319–324, doi 10.1080/00401706.1964.10490188.
 * @param pairs what came with what, one a patch.
 */
export function comparableSets(pairs: readonly (readonly [string, string])[]): ComparableSet[] {
  const sets: { names: Set<string>; partners: Set<string> }[] = [];
  for (const [name, partner] of pairs) {
    const tied = sets.filter((set) => set.names.has(name) || set.partners.has(partner));
    const [home = { names: new Set<string>(), partners: new Set<string>() }, ...others] = tied;
    if (tied.length === 0) sets.push(home);
    home.names.add(name);
    home.partners.add(partner);
    for (const other of others) {
      for (const one of other.names) home.names.add(one);
      for (const one of other.partners) home.partners.add(one);
      sets.splice(sets.indexOf(other), 1);
    }
  }
  return sets.map(({ names, partners }) => ({ names: [...names], partners: [...partners] }));
}
