/** An acid in water: strong, or with the constants of each step at 25 °C. */
export interface Acid {
  readonly id: string;
  readonly name: string;
  /** Empty: fully dissociated in one step. */
  readonly pKa: readonly number[];
  readonly source: string;
}

const averill = 'Averill & Eldredge 2012, Principles of General Chemistry, Appendix C';

/** pKa at 25 °C. Tables disagree (citric pKa3 6.40 or 5.60, oxalic pKa2 3.81 or 4.28): the source is named for each. */
export const acids: readonly Acid[] = [
  { id: 'nitric', name: 'nitric acid', pKa: [], source: 'taken as fully dissociated' },
  { id: 'hydrochloric', name: 'hydrochloric acid', pKa: [], source: 'taken as fully dissociated' },
  {
    id: 'phosphoric',
    name: 'phosphoric acid',
    pKa: [2.148, 7.206, 12.342],
    source: 'Fromm 1997, Ionization constants of aqueous polyprotic acids',
  },
  { id: 'citric', name: 'citric acid', pKa: [3.13, 4.76, 6.4], source: averill },
  { id: 'oxalic', name: 'oxalic acid', pKa: [1.25, 3.81], source: averill },
  { id: 'acetic', name: 'acetic acid', pKa: [4.756], source: averill },
  { id: 'formic', name: 'formic acid', pKa: [3.75], source: averill },
  { id: 'carbonic', name: 'carbonic acid', pKa: [6.35, 10.33], source: averill },
];
