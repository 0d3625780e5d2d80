import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  densityOfPercent,
  nitricAt20C,
  nitricAt25C,
  nitricPercentAt60F,
  percentOfDensity,
  phosphoricAt25C,
} from '../../src/science/chemistry/acidDensity.ts';
import { acids } from '../../src/science/chemistry/acids.ts';
import {
  baumeModulus,
  baumeOfSpecificGravity,
  specificGravityOfBaume,
} from '../../src/science/chemistry/baume.ts';
import { pHOf } from '../../src/science/chemistry/chargeBalance.ts';
import {
  alligation,
  dilutionByWeight,
  molarity,
  molarityOfGramsPerLitre,
  stockForDilution,
  volumePercentOfParts,
} from '../../src/science/chemistry/concentration.ts';
import { droppedAcid, dropsPerMl } from '../../src/science/chemistry/drops.ts';
import { glucuronicPercent, pHInGum } from '../../src/science/chemistry/gumBuffer.ts';
import { limestoneDissolved } from '../../src/science/chemistry/limestoneDissolved.ts';
import { molarMass } from '../../src/science/chemistry/molarMass.ts';

interface Row {
  readonly id: string;
  readonly inputs: Readonly<Record<string, never>> & Record<string, number>;
  readonly expected: number | number[] | Record<string, number>;
  readonly tolerance: { readonly absolute?: number; readonly relative?: number };
  readonly confirmed: boolean;
}

/** Each row names its own source; only rows that were confirmed are used as marks. */
const rows: Row[] = JSON.parse(readFileSync(new URL('data/chemistry.json', import.meta.url), 'utf8'));
const confirmed = rows.filter((row) => row.confirmed);

const near = (row: Row, computed: number, expected = row.expected as number) =>
  expect(Math.abs(computed - expected), `${row.id}: ${computed} for ${expected}`).toBeLessThanOrEqual(
    (row.tolerance.absolute ?? Math.abs(expected) * (row.tolerance.relative ?? 0)) + 1e-9,
  );

const each = (name: string, pattern: RegExp, least: number, check: (row: Row) => void) =>
  test(name, () => {
    const found = confirmed.filter((row) => pattern.test(row.id));
    expect(found.length).toBeGreaterThanOrEqual(least);
    for (const row of found) check(row);
  });

describe('Baumé', () => {
  each('specific gravity on each scale', /^baume-(sg|modulus)-/, 22, (row) => {
    expect(Object.values(baumeModulus), row.id).toContain(row.inputs.modulus);
    near(row, specificGravityOfBaume(row.inputs.baume!, row.inputs.modulus!));
  });
  each('on the American scale where none is named', /^baume-sg-/, 20, (row) =>
    near(row, specificGravityOfBaume(row.inputs.baume!)),
  );
  each('and back', /^sg-baume-/, 7, (row) =>
    near(row, baumeOfSpecificGravity(row.inputs.specific_gravity!, row.inputs.modulus!)),
  );
  test('degrees and gravities that are not on the scale give NaN', () => {
    expect(specificGravityOfBaume(145)).toBeNaN();
    expect(specificGravityOfBaume(-1)).toBeNaN();
    expect(baumeOfSpecificGravity(0.9)).toBeNaN();
  });
});

describe('strength of acids', () => {
  each('density of nitric acid by weight', /^hno3-density-/, 20, (row) => {
    const table = row.inputs.temperature_c === 25 ? nitricAt25C : nitricAt20C;
    near(row, densityOfPercent(table, row.inputs.percent_w_w!));
    expect(percentOfDensity(table, row.expected as number)).toBeCloseTo(row.inputs.percent_w_w!, 6);
  });
  each('relative density of phosphoric acid lies in the printed range', /^h3po4-reldensity-/, 5, (row) => {
    const relative = densityOfPercent(phosphoricAt25C, row.inputs.percent_w_w!);
    const [low, high] = row.expected as number[];
    const allowance = phosphoricAt25C.plusMinus + row.tolerance.absolute!;
    expect(relative).toBeGreaterThanOrEqual(low! - allowance);
    expect(relative).toBeLessThanOrEqual(high! + allowance);
  });
  each('molarity by weight and density', /^molarity-/, 10, (row) =>
    near(row, molarity(row.inputs.percent_w_w!, row.inputs.density_g_ml!, row.inputs.molar_mass!)),
  );
  test('the two acids called concentrated nitric differ by about 4 %', () => {
    expect(molarity(70, 1.42, 63.013) / molarity(68, 1.4048, 63.013)).toBeCloseTo(1.0405, 3);
  });
  each('36 °Bé nitric acid by the printed chart', /^hno3-36be-percent/, 1, (row) =>
    near(row, nitricPercentAt60F(specificGravityOfBaume(row.inputs.baume!))),
  );
  each('the azeotrope lies on the printed density curve', /^hno3-azeotrope$/, 1, (row) => {
    const printed = row.expected as Record<string, number>;
    // The row's 0.5 is for whole per cent; its density is printed to 0.01.
    expect(Math.abs(densityOfPercent(nitricAt20C, printed.percent_w_w!) - printed.d20_4!)).toBeLessThan(0.01);
  });
  each('molar masses', /^molar-mass-/, 10, (row) => near(row, molarMass(String(row.inputs.formula))));
  each('nominal molarity of tannic acid', /^tannic-10pc/, 1, (row) =>
    near(row, molarityOfGramsPerLitre(row.inputs.grams_per_litre!, row.inputs.molar_mass!)),
  );
  each(
    'constants in use agree with the printed ones',
    /^pka-(acetic|citric|oxalic|formic|carbonic|phosphoric-fromm)/,
    6,
    (row) => {
      const acid = acids.find((candidate) => row.id.includes(candidate.id))!;
      for (const [index, value] of (row.expected as number[]).entries()) near(row, acid.pKa[index]!, value);
    },
  );
});

describe('pH by charge balance', () => {
  each('with activities, against the printed table; ideal, against exact balances', /^ph-.*mM/, 28, (row) => {
    const constants = (row.inputs.pka as unknown) === 'strong' ? [] : (row.inputs.pka as unknown as number[]);
    const model =
      (row.inputs.activity_model as unknown as string) === 'none' ? 'ideal' : 'extended Debye–Hückel';
    near(row, pHOf({ acids: [{ molar: row.inputs.molar!, pKa: constants }], fixedCharge: 0 }, model));
  });
  test('water alone is neutral; a negative concentration has no pH', () => {
    expect(pHOf({ acids: [], fixedCharge: 0 }, 'ideal')).toBeCloseTo(7, 6);
    const product = confirmed.find((row) => row.id === 'kw-25')!;
    near(product, 2 * pHOf({ acids: [], fixedCharge: 0 }, 'ideal'));
    expect(pHOf({ acids: [{ molar: -1, pKa: [] }], fixedCharge: 0 }, 'ideal')).toBeNaN();
  });
  test('gum without acid keeps its own pH, and takes up the first acid', () => {
    const gum = { gramsPerLitre: 216, pH: 4.6 };
    expect(pHInGum({ molar: 0, pKa: [] }, gum).value).toBeCloseTo(4.6, 3);
    const acid = { molar: 0.05, pKa: [] };
    expect(pHInGum(acid, gum).low).toBeGreaterThan(pHOf({ acids: [acid], fixedCharge: 0 }, 'ideal') + 0.5);
  });
  each('glucuronic acid from equivalent weight', /^gum-uronic-/, 3, (row) =>
    near(row, glucuronicPercent(row.inputs.acid_equivalent_weight!)),
  );
});

describe('drops, dilution, alligation, limestone', () => {
  each('drops to a millilitre', /^drop(s-per-ml|-usp-per-ml)/, 4, (row) => {
    const grams = row.inputs.drop_g ?? row.inputs.drop_mg! / 1000;
    near(row, dropsPerMl(1, grams, row.inputs.density_g_ml ?? 1, 0.0001).value);
  });
  each(
    'few drops weighed carry the allowance for a calibrated dropper',
    /^dropper-volume-error$/,
    1,
    (row) => {
      const few = dropsPerMl(1, 0.05, 1, 0);
      near(row, 100 * (few.high / few.value - 1));
      near(row, 100 * (1 - few.low / few.value));
    },
  );
  each('a drop of water from each tip, and its drops to a millilitre', /^drop-eschbaum-/, 6, (row) => {
    const grams = row.expected as number;
    expect(dropsPerMl(20, 20 * grams, 1, 0.001).value * grams).toBeCloseTo(1, 12);
  });
  each('acid in an etch made by drops', /^drops-molarity-/, 6, (row) => {
    const { drops, drops_per_ml, acid_molar, gum_ml } = row.inputs;
    const found = droppedAcid(drops!, drops_per_ml!, acid_molar!, gum_ml!);
    const expected = row.expected as Record<string, number>;
    near(row, found.acidMl, expected.acid_ml);
    near(row, found.acidMmol, expected.acid_mmol);
    near(row, found.molarity, expected.molarity);
  });
  each('dilution by concentration', /^dilution-(hno3-15|h3po4|acetic|hcl)/, 6, (row) =>
    near(row, stockForDilution(row.inputs.c1!, row.inputs.c2!, row.inputs.v2_ml!)),
  );
  test('10 % nitric from 68 %: water by mass balance, since volumes do not add', () => {
    const made = dilutionByWeight(
      { percent: 68, gramsPerMl: 1.4048 },
      { percent: 10, gramsPerMl: 1.0543, ml: 1000 },
    );
    const row = (id: string) => confirmed.find((candidate) => candidate.id === id)!;
    near(row('dilution-hno3-10-from-68-acid'), made.stockMl);
    near(row('dilution-hno3-10-from-68-water'), made.waterGrams);
    expect(made.waterGrams).toBeGreaterThan(890 + 5);
  });
  each('alligation', /^alligation-/, 4, (row) => {
    const { weak_percent, strong_percent, target_percent } = row.inputs;
    const expected = row.expected as Record<string, number>;
    expect(alligation(weak_percent!, strong_percent!, target_percent!)).toEqual({
      strongParts: expected.strong_parts,
      weakParts: expected.weak_parts,
    });
  });
  test('alligation refuses a strength that does not lie between', () => {
    expect(alligation(5, 30, 31)).toBeNull();
    expect(alligation(5, 30, 4)).toBeNull();
    expect(alligation(0, 10, 2.5)).toEqual({ strongParts: 1, weakParts: 3 });
  });
  each('parts as volume per cent', /^parts-percent-/, 6, (row) =>
    near(row, volumePercentOfParts(row.inputs.acid_parts!, row.inputs.water_parts!)),
  );
  each('limestone dissolved at most', /^calcite-(mass|depth|co2)/, 15, (row) => {
    const found = limestoneDissolved(
      row.inputs.acid_mmol_protons!,
      row.inputs.area_cm2!,
      row.inputs.density!,
    );
    const kind = row.id.split('-')[1] as 'mass' | 'depth' | 'co2';
    near(row, { mass: found.grams, depth: found.depthMicron, co2: found.carbonDioxideMl }[kind]);
  });
  each('phosphoric acid giving one proton or two', /^calcite-h3po4/, 2, (row) =>
    near(row, limestoneDissolved(row.inputs.acid_mmol! * row.inputs.protons_used!, 100).grams),
  );
});
