import type { Cause } from '../../src/records/suspects.ts';
import type { Fault } from '../../src/sample/render/faults/fault.ts';
import type { Damage, Patch } from '../../src/sample/render/printing.ts';
import type { Point } from '../../src/science/geometry/point.ts';
import { centroid, containsPoint } from '../../src/science/geometry/polygon.ts';
import type { Planting } from './planting.ts';

/** Puts a fault of a cause on both pulls, and what it leaves in a log. Not taken from the table of suspects. */
export function plantCause(cause: Cause, planting: Planting): void {
  const { amount, between, random, pulls, drawing, log } = planting;
  /** A place across or along which there is work to show it. */
  const inBoxes = (axis: 0 | 1) => boxes(planting, 0.1, 0.9, 1)[0]![axis] + between(-7, 7);
  const sign = () => (random() < 0.5 ? -1 : 1);
  const some = (share: number) => random() < share;
  const fault = (one: Fault, other: Fault | null = one) => {
    pulls[0].faults.push(one);
    if (other) pulls[1].faults.push(other);
  };
  const damage = (change: (before: Damage, pull: 0 | 1) => Partial<Damage>) => {
    for (const i of [0, 1] as const) pulls[i].damage = { ...pulls[i].damage, ...change(pulls[i].damage, i) };
  };
  const grey = (first: number, second: number) =>
    damage((before, i) => ({ uniformScum: Math.max(before.uniformScum, i === 0 ? first : second) }));
  const closed = (open: number, shut: number, second = 0) => {
    pulls[0].transfer = { ...pulls[0].transfer, darksClosed: [open, shut] };
    pulls[1].transfer = { ...pulls[1].transfer, darksClosed: [open - second, shut - second] };
  };
  switch (cause) {
    case 'burn':
    case 'gum-blind': {
      const radiusMm = between(9, 14);
      const at = {
        kind: 'light-patches',
        centresMm: boxes(planting, 0.05, 0.28, 3),
        radiusMm,
        upToTone: 0.32,
      } as const;
      const lost = Math.min(1, amount(0.85, 1));
      if (cause === 'burn') {
        fault({ ...at, amount: lost });
        if (some(0.7)) log.etchOverrun = between(0.4, 1.2);
      } else
        fault(
          { ...at, amount: lost },
          { ...at, amount: lost * between(0.1, 0.45), radiusMm: radiusMm * between(0.6, 0.9) },
        );
      return;
    }
    case 'short-roll-up': {
      const gone = amount(0.1, 0.16);
      pulls[0].transfer = { ...pulls[0].transfer, lightsLost: [gone, gone + 0.25] };
      pulls[1].transfer = { ...pulls[1].transfer, lightsLost: [gone * between(0.2, 0.5), gone + 0.14] };
      if (some(0.6)) log.rollUpShort = between(0.35, 0.8);
      return;
    }
    case 'poor-base': {
      const patches = boxes(planting, 0.38, 0.9, 2).map(
        (centreMm): Patch => ({
          kind: 'lost',
          centreMm,
          radiiMm: [between(7, 12), between(7, 12)],
          amount: Math.min(1, amount(0.8, 1)),
        }),
      );
      damage((before) => ({ patches: [...before.patches, ...patches] }));
      if (some(0.5)) log.baseSkipped = 1;
      return;
    }
    case 'hollow':
      fault({
        kind: 'soft-patch',
        centreMm: boxes(planting, 0.4, 0.9, 1)[0]!,
        radiusMm: between(13, 20),
        amount: amount(0.2, 0.34),
      });
      return;
    case 'too-much-ink':
      closed(between(0.42, 0.55), between(0.84, 0.95), amount(0.08, 0.15));
      return;
    case 'pressure-high':
      closed(between(0.48, 0.58), between(0.86, 0.95));
      for (const pull of pulls)
        pull.transfer = { ...pull.transfer, gain: pull.transfer.gain + amount(0.12, 0.18) };
      return;
    case 'weak-etch': {
      closed(between(0.45, 0.55), between(0.85, 0.95));
      const level = amount(0.04, 0.08);
      grey(level, level + between(-0.004, 0.008));
      if (some(0.65)) log.etchShort = between(0.35, 0.7);
      return;
    }
    case 'pressure-low':
      for (const pull of pulls) pull.weakPrint += amount(0.28, 0.5);
      return;
    case 'starved':
      for (const pull of pulls) {
        pull.weakPrint += amount(0.28, 0.45);
        pull.weakStone += amount(0.28, 0.45);
      }
      return;
    case 'border-bare': {
      const all = ['left', 'top', 'right', 'bottom'] as const;
      const sides = all.filter(() => some(0.7));
      damage(() => ({
        edgeScum: {
          coverage: amount(0.07, 0.15),
          reachMm: between(8, 11),
          sides: sides.length > 0 ? sides : ['left'],
        },
      }));
      if (some(0.4)) log.borderSkipped = 1;
      return;
    }
    case 'tint':
    case 'scum': {
      const level = amount(0.045, 0.08);
      grey(level, level + between(0.012, 0.04));
      if (cause === 'scum' && some(0.65)) log.ungummedPause = between(10, 60);
      return;
    }
    case 'scraper-nick':
      fault({
        kind: 'streak',
        atMm: inBoxes(0),
        widthMm: between(1.8, 3.5),
        amount: (some(0.3) ? -1 : 1) * amount(0.25, 0.45),
      });
      return;
    case 'bed-grit':
      fault({
        kind: 'streak',
        atMm: inBoxes(0),
        widthMm: between(2, 4),
        amount: amount(0.22, 0.35),
      });
      fault({ kind: 'spots', count: 3, radiusMm: 1.2, amount: 0.7, seed: Math.floor(random() * 1e6) });
      return;
    case 'tympan':
      fault({
        kind: 'spots',
        count: Math.round(between(26, 40)),
        radiusMm: between(1.3, 2),
        amount: Math.min(0.98, amount(0.75, 0.9)),
        seed: Math.floor(random() * 1e6),
      });
      return;
    case 'uneven-pressure':
      fault({ kind: 'slope', across: sign() * amount(0.24, 0.42), along: between(-0.06, 0.06) });
      return;
    case 'uneven-rolling': {
      const along = sign() * amount(0.24, 0.42);
      fault(
        { kind: 'slope', across: 0, along },
        { kind: 'slope', across: 0, along: along * between(0.4, 1) },
      );
      return;
    }
    case 'roller-lap':
      fault({ kind: 'waves', periodMm: between(20, 48), phase: between(0, 6), amount: amount(0.14, 0.26) });
      return;
    case 'press-stop':
      fault(
        {
          kind: 'band',
          atMm: inBoxes(1),
          widthMm: between(5, 9),
          amount: (some(0.4) ? -1 : 1) * amount(0.25, 0.42),
        },
        null,
      );
      return;
    case 'dirty-roller':
      fault({ kind: 'again', offsetMm: [0, sign() * between(34, 70)], amount: amount(0.09, 0.17) });
      return;
    case 'paper-moved': {
      const angle = ((sign() * between(25, 90) + 90) * Math.PI) / 180;
      const far = between(1.8, 3.2);
      fault(
        { kind: 'again', offsetMm: [far * Math.cos(angle), far * Math.sin(angle)], amount: amount(0.3, 0.5) },
        null,
      );
      return;
    }
    case 'slur':
      fault({ kind: 'smear', overMm: [0, sign() * between(3, 5)], amount: amount(0.35, 0.55) });
      return;
    case 'old-image':
      fault({
        kind: 'shapes',
        coverage: amount(0.08, 0.15),
        sizeMm: between(4, 6),
        seed: Math.floor(random() * 1000),
      });
      return;
    case 'etch-crept': {
      const turn = Math.floor(random() * 4) * (Math.PI / 2);
      const towards: Point | null = some(0.4) ? [Math.cos(turn), Math.sin(turn)] : null;
      fault({ kind: 'halo', reachMm: between(5, 7), amount: Math.min(0.95, amount(0.45, 0.75)), towards });
      return;
    }
    case 'medium-lost': {
      const zone = pick(
        planting,
        drawnZones(planting, 0.14, 0.85).filter((id) => !hasDisc(planting, id)),
      );
      for (const pull of pulls)
        pull.zoneTransfers[zone] = { ...pull.transfer, lightsLost: [1, 1.1], gain: 0, darksClosed: [2, 3] };
      return;
    }
    case 'smudge': {
      const turn = Math.floor(random() * 4) * (Math.PI / 2);
      const length = between(6, 10);
      fault({
        kind: 'tails',
        overMm: [length * Math.cos(turn), length * Math.sin(turn)],
        amount: amount(0.2, 0.4),
      });
      if (some(0.5)) log.powderSkipped = 1;
      return;
    }
    case 'stop-out-failed': {
      const stop = drawing.stopOuts[0];
      if (!stop) return;
      const patch: Patch = {
        kind: 'scum',
        centreMm: stop.centreMm,
        radiiMm: [stop.radiusMm, stop.radiusMm],
        amount: Math.min(1, amount(0.3, 0.8)),
      };
      damage((before) => ({ patches: [...before.patches, patch] }));
      return;
    }
    case 'photograph':
      planting.spoiled = true;
      return;
    default:
      cause satisfies never;
  }
}

/** The mean tone of a zone as drawn. */
function toneOf({ drawing }: Planting, id: string): number {
  const mark = drawing.marks.find((one) => one.kind === 'area' && one.zoneId === id);
  const zone = drawing.zones.find((one) => one.id === id)!;
  return mark?.kind === 'area' ? mark.tone(...centroid(zone.polygonMm)) : 0;
}

function drawnZones(planting: Planting, from: number, to: number): string[] {
  return planting.drawing.zones
    .map(({ id }) => id)
    .filter((id) => toneOf(planting, id) >= from && toneOf(planting, id) <= to);
}

function hasDisc({ drawing }: Planting, id: string): boolean {
  const centre = centroid(drawing.zones.find((zone) => zone.id === id)!.polygonMm);
  return drawing.marks.some(
    (mark) => mark.kind === 'area' && mark.zoneId === null && containsPoint(mark.polygonMm, centre),
  );
}

function pick<T>({ random }: Planting, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)]!;
}

/** Centres of up to so many zones of a tone. */
function boxes(planting: Planting, from: number, to: number, count: number): Point[] {
  const left = drawnZones(planting, from, to);
  const chosen: Point[] = [];
  while (chosen.length < count && left.length > 0) {
    const [id] = left.splice(Math.floor(planting.random() * left.length), 1);
    chosen.push(centroid(planting.drawing.zones.find((zone) => zone.id === id)!.polygonMm));
  }
  return chosen;
}
