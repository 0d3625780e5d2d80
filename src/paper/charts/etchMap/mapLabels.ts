import type { Point } from '../../../science/geometry/point.ts';
import { centroid, signedArea } from '../../../science/geometry/polygon.ts';
import { roomAt, roomiestPoint } from '../../../science/geometry/roomiestPoint.ts';
import { asWritten } from '../../../words/asWritten.ts';
import { chartInk, svgText } from '../chartInk.ts';
import type { Box } from '../strengthHatching.ts';
import { clippedRing } from './clippedRing.ts';
import type { MapArea } from './mapAreas.ts';

/** Printed sizes in mm; words in shares of the letter above them. */
const sizes = { letterLeast: 3.2, letterWithWords: 5, words: 0.42, wordsLeast: 3 } as const;
/** Width of a bold letter and of ordinary text, and height of a capital, in shares of the size. */
const letterShape = { wide: 0.7, text: 0.54, capital: 0.69 } as const;

/** A label where it stands, in user units. */
interface Label {
  readonly area: MapArea;
  readonly centre: Point;
  readonly letterSize: number;
  readonly withWords: boolean;
  /** Where a line leads to, when the label doesn't fit inside its place. */
  readonly leadsTo: Point | null;
}

/**
 * Letters with millilitres and minutes, each inside its place where that is roomiest; only the letter where the place
 * is small; beside it with a line where it is smaller still.
 * @param unit user units for one printed mm. @param within labels stand for what shows in this box, and inside it.
 * @param letterMostMm how large a letter may be printed. @param withWords false: letters alone.
 * @returns the labels, and the boxes that they fill.
 */
export function mapLabelsSvg(
  areas: readonly MapArea[],
  unit: number,
  within: Box,
  letterMostMm: number,
  withWords: boolean,
): { readonly svg: string; readonly boxes: readonly Box[] } {
  const labels: Label[] = [];
  for (const [index, area] of areas.entries()) {
    const covering = areas.slice(index + 1).flatMap((other) => other.rings);
    const label = labelOf(area, covering, { unit, within, letterMostMm, withWords }, labels);
    if (label) labels.push(label);
  }
  return {
    svg: labels.map((label) => labelSvg(label, unit)).join(''),
    boxes: labels.map((label) => boxOf(label, unit)),
  };
}

interface LabelRules {
  readonly unit: number;
  readonly within: Box;
  readonly letterMostMm: number;
  readonly withWords: boolean;
}

function labelOf(
  area: MapArea,
  covering: MapArea['rings'],
  { unit, within, letterMostMm, withWords }: LabelRules,
  standing: readonly Label[],
): Label | null {
  const rings = area.rings.map((ring) => clippedRing(ring, within)).filter((ring) => ring.length > 2);
  const room = placeForLetter(rings, covering, unit) ?? placeForLetter(rings, [], unit);
  if (!room) return null;
  const inside = (letterSize: number, words: boolean): Label => ({
    area,
    centre: room.point,
    letterSize,
    withWords: words,
    leadsTo: null,
  });
  for (let size = letterMostMm * unit; withWords && size >= sizes.letterWithWords * unit; size *= 0.92) {
    const label = inside(size, true);
    if (halfDiagonal(label, unit) <= room.radius * 1.05) return label;
  }
  for (let size = letterMostMm * unit; size >= sizes.letterLeast * unit; size *= 0.92) {
    const label = inside(size, false);
    if (halfDiagonal(label, unit) <= room.radius * 1.1) return label;
  }
  // What another window shows in larger part has its letter there.
  const cut = area.rings.some((ring) => ring.some(([x, y]) => outside(x, y, within)));
  if (cut) return null;
  return besideIt(inside(sizes.letterLeast * unit, false), unit, within, standing);
}

/** The middle of the place where that is about as roomy as anywhere, else the roomiest point. */
function placeForLetter(rings: MapArea['rings'], without: MapArea['rings'], unit: number) {
  const roomiest = roomiestPoint({ rings, without }, 0.2 * unit);
  if (!roomiest) return null;
  const largest = rings.toSorted((a, b) => Math.abs(signedArea(b)) - Math.abs(signedArea(a)))[0]!;
  const middle = centroid(largest);
  const radius = roomAt({ rings, without }, middle);
  return radius >= 0.9 * roomiest.radius ? { point: middle, radius } : roomiest;
}

/** The nearest of eight directions in which a letter stands free of other labels. */
function besideIt(label: Label, unit: number, within: Box, standing: readonly Label[]): Label {
  for (let reach = 1.4; reach <= 6; reach += 0.8) {
    for (let direction = 0; direction < 8; direction++) {
      const turn = (direction * Math.PI) / 4;
      const away = reach * label.letterSize;
      const centre: Point = [
        label.centre[0] + away * Math.cos(turn),
        label.centre[1] + away * Math.sin(turn),
      ];
      const moved = { ...label, centre, leadsTo: label.centre };
      const box = boxOf(moved, unit);
      if (outside(box.left, box.top, within) || outside(box.right, box.bottom, within)) continue;
      if (standing.some((other) => meet(box, boxOf(other, unit)))) continue;
      return moved;
    }
  }
  return label;
}

function wordsSize(label: Label, unit: number): number {
  return Math.max(sizes.wordsLeast * unit, Math.min(label.letterSize * sizes.words, 5 * unit));
}

function sizeOf(label: Label, unit: number): readonly [number, number] {
  const letterWidth = label.area.letter.length * letterShape.wide * label.letterSize;
  const letterHeight = letterShape.capital * label.letterSize;
  if (!label.withWords) return [letterWidth, letterHeight];
  const size = wordsSize(label, unit);
  const longest = Math.max(...label.area.words.map((words) => words.length));
  return [
    Math.max(letterWidth, longest * letterShape.text * size),
    letterHeight + label.area.words.length * 1.2 * size,
  ];
}

function halfDiagonal(label: Label, unit: number): number {
  const [width, height] = sizeOf(label, unit);
  return Math.hypot(width, height) / 2;
}

function boxOf(label: Label, unit: number): Box {
  const [width, height] = sizeOf(label, unit);
  const [x, y] = label.centre;
  const pad = 0.6 * unit;
  return {
    left: x - width / 2 - pad,
    right: x + width / 2 + pad,
    top: y - height / 2 - pad,
    bottom: y + height / 2 + pad,
  };
}

function labelSvg(label: Label, unit: number): string {
  const box = boxOf(label, unit);
  const [x, y] = label.centre;
  const [, height] = sizeOf(label, unit);
  const letterBase = y - height / 2 + letterShape.capital * label.letterSize;
  const size = wordsSize(label, unit);
  const text = (words: string, base: number, fontSize: number, weight: string) =>
    `<text x="${round(x)}" y="${round(base)}" font-size="${round(fontSize)}" font-weight="${weight}"` +
    ` text-anchor="middle" fill="${chartInk.ink}">${svgText(asWritten(words))}</text>`;
  const lead = label.leadsTo
    ? `<path d="M${round(x)} ${round(y)}L${round(label.leadsTo[0])} ${round(label.leadsTo[1])}"` +
      ` stroke="${chartInk.ink}" stroke-width="${round(0.3 * unit)}" fill="none"/>`
    : '';
  return (
    lead +
    `<rect x="${round(box.left)}" y="${round(box.top)}" width="${round(box.right - box.left)}"` +
    ` height="${round(box.bottom - box.top)}" fill="#ffffff"/>` +
    text(label.area.letter, letterBase, label.letterSize, 'bold') +
    (label.withWords
      ? label.area.words
          .map((words, line) => text(words, letterBase + (line + 1) * 1.2 * size, size, 'normal'))
          .join('')
      : '')
  );
}

/** Whether two boxes share more than an edge. */
export function meet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function outside(x: number, y: number, box: Box): boolean {
  return x < box.left || x > box.right || y < box.top || y > box.bottom;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
