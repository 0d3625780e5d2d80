import fc from 'fast-check';
import { expect } from 'vitest';
import { densityOfPercent, nitricAt20C, percentOfDensity } from '../../src/science/chemistry/acidDensity.ts';
import { baumeOfSpecificGravity, specificGravityOfBaume } from '../../src/science/chemistry/baume.ts';
import { pHOf } from '../../src/science/chemistry/chargeBalance.ts';
import {
  alligation,
  dilutionByWeight,
  molarity,
  stockForDilution,
  volumePercentOfParts,
} from '../../src/science/chemistry/concentration.ts';
import { droppedAcid, dropsPerMl } from '../../src/science/chemistry/drops.ts';
import { close, holds } from './holds.ts';
import { millimetres as hundredths } from './shapes.ts';

const percent = fc.integer({ min: 1, max: 99 });
const ml = hundredths(1, 1000);

holds(
  'a dilution holds what was put in: from strong to weak and reckoned back',
  fc.property(percent, percent, ml, (a, b, wantedMl) => {
    const [weak, strong] = [Math.min(a, b), Math.max(a, b)];
    const stock = stockForDilution(strong, weak, wantedMl);
    close(stock * strong, weak * wantedMl);
    close((stock * strong) / wantedMl, weak);
    expect(stock).toBeLessThanOrEqual(wantedMl * (1 + 1e-12));
    if (weak < strong) expect(stockForDilution(weak, strong, wantedMl)).toBeNaN();
  }),
);

holds(
  'by weight nothing is lost: stock and water weigh what the mixture weighs, and the substance is all there',
  fc.property(percent, percent, ml, hundredths(1, 2), hundredths(1, 2), (a, b, wantedMl, heavy, light) => {
    const [weak, strong] = [Math.min(a, b), Math.max(a, b)];
    const made = dilutionByWeight(
      { percent: strong, gramsPerMl: heavy },
      { percent: weak, gramsPerMl: light, ml: wantedMl },
    );
    const whole = wantedMl * light;
    close(made.stockGrams + made.waterGrams, whole);
    close((made.stockGrams * strong) / 100, (whole * weak) / 100);
    close(made.stockMl * heavy, made.stockGrams);
  }),
);

holds(
  'mixing by alligation gives the strength that was asked for, and none outside the two is promised',
  fc.property(percent, percent, percent, (a, b, wanted) => {
    const [weak, strong] = [Math.min(a, b), Math.max(a, b)];
    const parts = alligation(weak, strong, wanted);
    if (wanted < weak || wanted > strong || weak === strong) {
      expect(parts).toBeNull();
      return;
    }
    const { strongParts, weakParts } = parts!;
    close((strongParts * strong + weakParts * weak) / (strongParts + weakParts), wanted);
  }),
);

holds(
  'degrees Baumé, density and per cent come back as they went, and rise together',
  fc.property(hundredths(0, 60), hundredths(0, 60), percent, (a, b, strength) => {
    close(baumeOfSpecificGravity(specificGravityOfBaume(a)), a, 1e-9);
    if (a < b) expect(specificGravityOfBaume(a)).toBeLessThan(specificGravityOfBaume(b));
    const density = densityOfPercent(nitricAt20C, strength);
    if (!Number.isNaN(density)) close(percentOfDensity(nitricAt20C, density), strength, 1e-6);
    expect(molarity(strength, 1.2, 63.013)).toBeGreaterThan(molarity(strength - 1, 1.2, 63.013));
  }),
);

holds(
  'drops: the weighed count lies in its own interval, and twice the drops are twice the acid',
  fc.property(fc.integer({ min: 1, max: 60 }), hundredths(1, 5), (count, grams) => {
    const { low, value, high } = dropsPerMl(count, grams, 1.4, 0.01);
    expect(low).toBeLessThanOrEqual(value);
    expect(value).toBeLessThanOrEqual(high);
    const [one, two] = [droppedAcid(count, 20, 15, 30), droppedAcid(2 * count, 20, 15, 30)];
    close(two.acidMmol, 2 * one.acidMmol);
    expect(two.molarity).toBeGreaterThan(one.molarity);
  }),
);

holds(
  'parts as per cent make up a hundred',
  fc.property(percent, percent, (a, b) =>
    close(volumePercentOfParts(a, b) + volumePercentOfParts(b, a), 100),
  ),
);

holds(
  'more acid never means a higher pH, with activities or without',
  fc.property(
    fc.integer({ min: 1, max: 150 }),
    fc.integer({ min: 1, max: 150 }),
    hundredths(2, 6),
    (a, b, pKa) => {
      for (const model of ['ideal', 'extended Debye–Hückel'] as const) {
        const at = (millimolar: number) =>
          pHOf({ acids: [{ molar: millimolar / 1000, pKa: [pKa] }], fixedCharge: 0 }, model);
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)) + 1e-9);
        expect(at(a)).toBeLessThanOrEqual(7 + 1e-9);
      }
    },
  ),
);
