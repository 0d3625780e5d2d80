import { expect, it } from 'vitest';
import type { TrialWish } from '../../../records/trialDesign.ts';
import { designTrial } from './designTrial.ts';
import { leastPatchMm } from './patchSize.ts';
import { trialLayout } from './trialLayout.ts';

const wish: TrialWish = {
  title: 'Test stone',
  stone: { widthMm: 300, heightMm: 400 },
  stones: 3,
  whole: { name: 'etch', levels: ['None', 'gum', 'tannic'] },
  sub: { name: 'medium', levels: ['crayon', 'wash', 'pen', 'solid', 'graphite'] },
  patchRepeats: 2,
  stripRepeats: 1,
  control: 'None',
  patchMm: null,
  gutterMm: 6,
  stripGutterMm: 12,
  border: { sidesMm: 15, endsMm: 25 },
  seed: 7,
  wanted: null,
  scatter: null,
};

function laidOut(changes: Partial<TrialWish> = {}) {
  const layout = trialLayout({ ...wish, ...changes });
  if (!layout.ok) throw new Error(layout.error.message);
  return layout.value;
}

it('gives every strip one level of the hard treatment and every level of the easy one as often', () => {
  const { patches, list } = laidOut();
  expect(patches).toHaveLength(3 * 3 * 10);
  const got = new Map(list.map((each) => [each.code, each]));
  for (const stone of [1, 2, 3]) {
    const onStone = patches.filter((patch) => patch.stone === stone);
    const strips = [...new Set(onStone.map(({ strip }) => strip))].map((strip) =>
      onStone.filter((patch) => patch.strip === strip),
    );
    const wholes = strips.map((own) => [...new Set(own.map(({ code }) => got.get(code)!.whole))]);
    expect(wholes.flat().toSorted()).toEqual(['None', 'gum', 'tannic']);
    for (const own of strips) {
      const subs = own.map(({ code }) => got.get(code)!.sub);
      expect(subs.toSorted()).toEqual(wish.sub.levels.flatMap((level) => [level, level]).toSorted());
    }
  }
});

it('keeps borders and gutters, and no two patches meet', () => {
  const { patches, patchMm } = laidOut();
  const own = patches.filter((patch) => patch.stone === 1);
  expect(patchMm).toBeGreaterThanOrEqual(leastPatchMm);
  for (const { polygonMm } of own) {
    const [[left, top], , [right, bottom]] = polygonMm as [[number, number], unknown, [number, number]];
    expect(left).toBeGreaterThanOrEqual(15 - 1e-9);
    expect(right).toBeLessThanOrEqual(285 + 1e-9);
    expect(top).toBeGreaterThanOrEqual(25 - 1e-9);
    expect(bottom).toBeLessThanOrEqual(375 + 1e-9);
  }
  for (const [i, one] of own.entries())
    for (const other of own.slice(i + 1)) {
      const across = Math.abs(one.polygonMm[0]![0] - other.polygonMm[0]![0]) - patchMm;
      const down = Math.abs(one.polygonMm[0]![1] - other.polygonMm[0]![1]) - patchMm;
      expect(Math.max(across, down)).toBeGreaterThanOrEqual((one.strip === other.strip ? 6 : 12) - 1e-9);
    }
});

it('draws lots anew for every stone, and the same for the same seed', () => {
  const order = (seed: number, stone: number) =>
    laidOut({ seed })
      .list.filter(({ code }) => code.startsWith(`stone ${stone}, `))
      .map(({ whole, sub }) => `${whole} ${sub}`)
      .join();
  expect(order(7, 1)).toBe(order(7, 1));
  expect(order(7, 1)).not.toBe(order(7, 2));
  expect(order(7, 1)).not.toBe(order(8, 1));
});

it('says how much room there is where the patches do not fit', () => {
  const tight = trialLayout({ ...wish, stone: { widthMm: 120, heightMm: 140 } });
  expect(tight.ok).toBe(false);
  if (!tight.ok) {
    expect(tight.error.code).toBe('trial-does-not-fit');
    expect(tight.error.message).toMatch(/30 patches of 12 mm do not fit/);
  }
  expect(trialLayout({ ...wish, patchMm: 200 }).ok).toBe(false);
});

it('warns of what it could not tell, and finds the cheapest trial that could', () => {
  const designed = designTrial({ ...wish, stones: 1, control: null, wanted: 0.1 });
  if (!designed.ok) throw new Error(designed.error.message);
  const { warnings, layouts, power } = designed.value.design;
  expect(warnings.join(' ')).toMatch(/etch is given to one strip only: no cause could be assigned/);
  expect(warnings.join(' ')).toMatch(/No control/);
  expect(warnings.join(' ')).toMatch(/One stone/);
  expect(power.map(({ of }) => of)).toEqual(['low', 'middle', 'high']);
  expect(layouts!.map(({ layout }) => layout).toSorted()).toEqual(['blocked', 'row-column', 'split-plot']);
  expect(layouts!.map(({ minutes }) => minutes)).toEqual(
    layouts!.map(({ minutes }) => minutes).toSorted((a, b) => a - b),
  );
  for (const { blocks, chances, minutes, patches, ...size } of layouts!) {
    const bought = designTrial({ ...wish, ...size, blocks: blocks ?? undefined, control: null });
    if (!bought.ok) throw new Error(bought.error.message);
    expect(bought.value.design.patches).toHaveLength(patches);
    const [low, middle, high] = bought.value.design.power;
    expect(Math.max(middle!.whole!, middle!.sub!)).toBeLessThanOrEqual(0.1);
    // Noticed 8 times in 10 is what the chance is then, and it falls as scatter grows.
    const [ofLow, ofMiddle, ofHigh] = chances.map(({ chance }) => chance);
    expect(ofMiddle).toBeGreaterThanOrEqual(0.8);
    expect(ofLow).toBeGreaterThanOrEqual(ofMiddle!);
    expect(ofHigh! >= 0.8).toBe(Math.max(high!.whole!, high!.sub!) <= 0.1);
    expect(low!.sub).toBeLessThan(high!.sub!);
    expect(minutes).toBeGreaterThan(90 * size.stones);
  }
});

it('a blocked trial has every combination in every block', () => {
  const blocked = {
    layout: 'blocked',
    blocks: 'both',
    stones: 2,
    patchRepeats: 1,
    whole: { name: 'etch', levels: ['None', 'gum'] },
  } as const;
  const { patches, list } = laidOut(blocked);
  expect(patches).toHaveLength(2 * 4 * 10);
  const got = new Map(list.map((each) => [each.code, each]));
  const blocks = new Map<string, string[]>();
  for (const { stone, strip, code } of patches) {
    const { whole, sub } = got.get(code)!;
    blocks.set(`${stone}${strip}`, [...(blocks.get(`${stone}${strip}`) ?? []), `${whole} ${sub}`]);
  }
  expect(blocks.size).toBe(8);
  for (const own of blocks.values()) expect(new Set(own).size).toBe(10);
  // Left block lies left of the right one, head above tail.
  const leftOf = (strip: string) =>
    Math.min(...patches.filter((one) => one.strip === strip).map(({ polygonMm }) => polygonMm[0]![0]));
  expect(leftOf('2')).toBeGreaterThan(leftOf('1'));
  expect(leftOf('3')).toBe(leftOf('1'));
});

it('a row-column trial has every combination once in each row and column', () => {
  const square = { layout: 'row-column', stones: 2, patchRepeats: 5, whole: null } as const;
  const { patches, list } = laidOut(square);
  expect(patches).toHaveLength(2 * 25);
  const got = new Map(list.map((each) => [each.code, each.sub]));
  for (const stone of [1, 2]) {
    const own = patches.filter((patch) => patch.stone === stone);
    const lines = (keyOf: (patch: (typeof own)[number]) => string) =>
      [...new Set(own.map(keyOf))].map((key) => own.filter((patch) => keyOf(patch) === key));
    const rows = lines(({ strip }) => strip);
    const columns = lines(({ polygonMm }) => polygonMm[0]![0].toFixed(3));
    expect([rows.length, columns.length]).toEqual([5, 5]);
    for (const line of [...rows, ...columns])
      expect(new Set(line.map(({ code }) => got.get(code))).size).toBe(5);
  }
  const orders = [1, 2].map((stone) =>
    list
      .filter(({ code }) => code.startsWith(`stone ${stone}, `))
      .map(({ sub }) => sub)
      .join(),
  );
  expect(orders[0]).not.toBe(orders[1]);
});

it('a treatment of whole stones is given to as many stones each', () => {
  const { list } = laidOut({ stones: 4, perStone: { name: 'grain', levels: ['80', '220'] } });
  const byStone = new Map(list.map(({ code, perStone }) => [code.split(',')[0], perStone]));
  expect([...byStone.values()].toSorted()).toEqual(['220', '220', '80', '80']);
});

it('lots never leave every strip in one order on all stones', () => {
  const etches = { name: 'etch', levels: ['None', 'gum'] };
  for (let seed = 0; seed < 40; seed++) {
    const { list } = laidOut({ whole: etches, stones: 2, seed });
    const order = (stone: number) =>
      [
        ...new Set(list.filter(({ code }) => code.startsWith(`stone ${stone}, `)).map(({ whole }) => whole)),
      ].join();
    expect(order(1)).not.toBe(order(2));
  }
});

it('patches are as large as the camera can tell', () => {
  expect(trialLayout({ ...wish, cameraPixels: 4000, patchMm: null }).ok).toBe(true);
  const coarse = trialLayout({ ...wish, cameraPixels: 200 });
  expect(coarse.ok).toBe(false);
  if (!coarse.ok) expect(coarse.error.message).toMatch(/patches of 78 mm do not fit/);
});

it('calls patches by stone, row and place as they lie, whatever block they are in', () => {
  const { patches } = laidOut({ layout: 'blocked', blocks: 'both', stones: 2, patchRepeats: 1 });
  expect(patches[0]!.code).toBe('stone 1, row 1, first');
  for (const { code, row, column } of patches) {
    const lies = patches.filter((one) => one.code.slice(0, 7) === code.slice(0, 7));
    const { polygonMm } = lies.find((one) => one.code === code)!;
    const before = (axis: 0 | 1) =>
      new Set(
        lies
          .map((one) => Math.round(one.polygonMm[0]![axis]))
          .filter((at) => at < Math.round(polygonMm[0]![axis])),
      ).size;
    expect([row, column], code).toEqual([before(1) + 1, before(0) + 1]);
  }
  expect(new Set(patches.map(({ code }) => code)).size).toBe(patches.length);
});
