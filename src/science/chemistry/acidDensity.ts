/** One printed row: % by weight, g/ml. */
type DensityRow = readonly [percent: number, gramsPerMl: number];

/** A table of densities at one temperature, with what an interpolated value may be off by. */
export interface DensityTable {
  readonly acid: 'nitric' | 'phosphoric';
  readonly temperatureC: number;
  readonly rows: readonly DensityRow[];
  /** g/ml; between rows that are far apart the interpolation counts for more than the print. */
  readonly plusMinus: number;
  readonly source: string;
}

/** The row at 0 % is water (from memory: 0.9982 g/ml at 20 °C, 0.9970 at 25 °C). */
export const nitricAt20C: DensityTable = {
  acid: 'nitric',
  temperatureC: 20,
  rows: [
    [0, 0.9982],
    [1, 1.00364],
    [2, 1.00909],
    [3, 1.01457],
    [4, 1.02008],
    [5, 1.02563],
    [6, 1.03122],
    [7, 1.0369],
    [8, 1.0427],
    [9, 1.0485],
    [10, 1.0543],
    [11, 1.0602],
    [12, 1.0661],
    [13, 1.0721],
    [14, 1.0781],
    [52, 1.3219],
    [68, 1.4048],
  ],
  plusMinus: 0.004,
  source: "Perry & Green 1984, Perry's Chemical Engineers' Handbook, 6th ed. (read second-hand)",
};

/** As `nitricAt20C`, in wider steps. */
export const nitricAt25C: DensityTable = {
  acid: 'nitric',
  temperatureC: 25,
  rows: [
    [0, 0.997],
    [1, 1.00241],
    [2, 1.00778],
    [5, 1.02408],
    [10, 1.0523],
  ],
  plusMinus: 0.001,
  source: "Perry & Green 1984, Perry's Chemical Engineers' Handbook, 6th ed. (read second-hand)",
};

/** In wider steps; the row at 0 % as for nitric acid. */
export const phosphoricAt25C: DensityTable = {
  acid: 'phosphoric',
  temperatureC: 25,
  rows: [
    [0, 0.997],
    [10, 1.053],
    [30, 1.181],
    [50, 1.335],
    [75, 1.579],
    [85, 1.689],
  ],
  plusMinus: 0.01,
  source:
    'brewing-water worked figures 2020, temperature not stated there; 50 % is the middle of the range in ECHA dossier 15531',
};

/**
 * Density of an acid from its strength, linear between printed rows.
 * @param percent % by weight.
 * @returns g/ml; NaN outside the table.
 */
export function densityOfPercent(table: DensityTable, percent: number): number {
  return between(table.rows, percent);
}

/**
 * Strength of an acid from its density, linear between printed rows.
 * @param gramsPerMl at the table's temperature.
 * @returns % by weight; NaN outside the table.
 */
export function percentOfDensity(table: DensityTable, gramsPerMl: number): number {
  return between(
    table.rows.map(([percent, density]): DensityRow => [density, percent]),
    gramsPerMl,
  );
}

function between(rows: readonly DensityRow[], at: number): number {
  for (const [index, [x, y]] of rows.entries()) {
    if (at === x) return y;
    const next = rows[index + 1];
    if (next && at > x && at < next[0]) return y + ((at - x) / (next[0] - x)) * (next[1] - y);
  }
  return Number.NaN;
}

/** g/ml of water at 60 °F (15.6 °C), to which the US Baumé scale refers. */
const waterAt60F = 0.99904;
const degreesFrom60FTo20C = 20 - 15.56;

/** Fall of density per °C: 0.0004 at 10 % from the printed rows at 20 and 25 °C; its rise with strength is from memory. */
function fallPerDegree(percent: number): number {
  return 0.0004 + Math.max(0, percent - 10) * 0.000018;
}

/**
 * Strength of nitric acid read by a US Baumé hydrometer at 60 °F. Reading the 20 °C table without correcting for
 * temperature would be about 1 % too high at 36 °Bé.
 * @param specificGravity 60/60 °F.
 * @returns % by weight; NaN outside the table.
 */
export function nitricPercentAt60F(specificGravity: number): number {
  const gramsPerMl = specificGravity * waterAt60F;
  const uncorrected = percentOfDensity(nitricAt20C, gramsPerMl);
  return percentOfDensity(nitricAt20C, gramsPerMl - fallPerDegree(uncorrected) * degreesFrom60FTo20C);
}
