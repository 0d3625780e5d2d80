import { seededRandom } from '../../src/foundation/random.ts';
import type { Planting } from './planting.ts';

/** Faults that no row of the table describes; those to fit with and those to score with share no kind. */
export function plantUnknown(
  settings: 'fitting' | 'scoring',
  { amount, between, random, pulls, drawing }: Planting,
  seed: number,
): string {
  const [width, height] = drawing.sizeMm;
  const depth = amount(0.4, 0.6);
  const slanting = between(0.5, 1) * (random() < 0.5 ? -1 : 1);
  const pitch = between(22, 36);
  const [cx, cy] = [between(0.3, 0.7) * width, between(0.3, 0.7) * height];
  const phase = between(0, 6);
  const kinds: Record<string, (x: number, y: number) => number> =
    settings === 'fitting'
      ? {
          'slanting stripes': (x, y) =>
            1 - (depth * (1 + Math.sin((2 * Math.PI * (x + slanting * y)) / pitch + phase))) / 2,
          rings: (x, y) =>
            1 - (depth * (1 + Math.sin((2 * Math.PI * Math.hypot(x - cx, y - cy)) / pitch))) / 2,
          fan: (x, y) => 1 - (depth * (1 + Math.sin(7 * Math.atan2(y - cy, x - cx) + phase))) / 2,
          blotches: blotches(seed, drawing.sizeMm, 0.9 * depth),
          'tide line': (x, y) => {
            const beyond = (y - cy) * slanting + (x - cx) + 11 * Math.sin(y / 9 + phase);
            return 1 - depth * (0.35 + 0.35 * Math.tanh(beyond / 4)) - 0.3 * depth * Math.sin(x / 12);
          },
          lattice: (x, y) =>
            1 -
            (depth *
              (2 +
                Math.sin((2 * Math.PI * (x + slanting * y)) / pitch + phase) +
                Math.sin((2 * Math.PI * (y - slanting * x)) / pitch))) /
              4,
        }
      : {
          clouds: (x, y) =>
            1 -
            (depth *
              (1 +
                Math.sin(x / 9 + 1.7 * Math.sin(y / 13 + phase)) *
                  Math.sin(y / 10 + 1.4 * Math.sin(x / 11)))) /
              2,
          chequers: (x, y) =>
            1 -
            (depth *
              (1 +
                Math.tanh(3 * Math.sin((Math.PI * x) / pitch + phase) * Math.sin((Math.PI * y) / pitch)))) /
              2,
          'wavy stripes': (x, y) =>
            1 - (depth * (1 + Math.sin((2 * Math.PI * (x + 9 * Math.sin(y / 12))) / pitch))) / 2,
          'four corners': (x, y) =>
            1 -
            depth *
              (1 - Math.exp(-(((x - cx) / 26) ** 2 + ((y - cy) / 30) ** 2))) *
              (0.5 + 0.5 * Math.sin(x / 12) * Math.sin(y / 14)),
        };
  const names = Object.keys(kinds);
  const name = names[Math.floor(random() * names.length)]!;
  for (const pull of pulls) pull.faults.push({ kind: 'field', gain: kinds[name]! });
  return name;
}

/** Round pale places strewn without order, so many that they touch. */
function blotches(
  seed: number,
  [width, height]: readonly [number, number],
  depth: number,
): (x: number, y: number) => number {
  const random = seededRandom(seed + 5);
  const places = Array.from(
    { length: 26 },
    () => [random() * width, random() * height, 6 + 7 * random()] as const,
  );
  return (x, y) => {
    const most = places.reduce(
      (sum, [px, py, radius]) => sum + Math.exp(-((x - px) ** 2 + (y - py) ** 2) / radius ** 2),
      0,
    );
    return 1 - depth * Math.min(1, most);
  };
}
