import type { Basis } from '../../foundation/measured.ts';
import type { ExpectedTime, StageRule } from '../../records/bench.ts';
import { type LineStage, stagesOfLine } from '../../records/run.ts';
import { endSigns } from '../etch/endSigns.ts';

/** What a stage does to the stone, and what follows it. */
export interface LineRule extends StageRule {
  /** What usually comes next; null at the end of the line and after a correction. */
  readonly next: LineStage | null;
  /** Whether the stone lies under gum from here on; null: as before. */
  readonly gummed: boolean | null;
  readonly inked: boolean | null;
  /** Whether that holds from the stage's start or only once it has ended. */
  readonly holdsFrom: 'start' | 'end';
  /** A time of waiting only: the state of the stone is that of the stage before. */
  readonly waiting: boolean;
}

const minute = 60;
const hour = 3600;

const practice = (low: number | null, high: number | null, note: string): ExpectedTime => ({
  lowSeconds: low,
  highSeconds: high,
  basis: 'common practice',
  note,
});
const remembered = (low: number | null, high: number | null, note: string): ExpectedTime => ({
  lowSeconds: low,
  highSeconds: high,
  basis: 'memory',
  note,
});

interface More {
  readonly expected?: ExpectedTime;
  readonly basis?: Basis;
  readonly gummed?: boolean;
  readonly inked?: boolean;
  readonly holdsFrom?: 'end';
  readonly optional?: true;
  readonly waiting?: true;
}

function rule(
  name: string,
  next: LineStage | null,
  endSign: string,
  more: More = {},
): Omit<LineRule, 'stage'> {
  return {
    name,
    next,
    endSign,
    expected: more.expected ?? null,
    basis: more.basis ?? 'common practice',
    mayBeSkipped: more.optional ?? false,
    gummed: more.gummed ?? null,
    inked: more.inked ?? null,
    holdsFrom: more.holdsFrom ?? 'start',
    waiting: more.waiting ?? false,
  };
}

const ghost = 'only a ghost of the drawing is left';
const baseDry = 'dry to the back of a finger, no smell of solvent close by';
const clean = 'the drawing is full and even, bare stone stays clean';
const washing = remembered(minute, 3 * minute, 'through dry gum, no water before it');
const rubbing = practice(50, 50, 'rubbed, then buffed');
const airing = practice(5 * minute, 5 * minute, 'warm only if the maker’s sheet allows');

/** Common practice without source, or from memory. */
const rules: Readonly<Record<LineStage, Omit<LineRule, 'stage'>>> = {
  level: rule('level', 'grain', 'no gap over 0.1 mm under the straightedge', { basis: 'memory' }),
  grain: rule('grain', 'edges', 'an even grain, no old image, no scratch in raking light', {
    gummed: false,
    inked: false,
  }),
  edges: rule('round the edges', 'gum-border', 'rounded 3–5 mm all round'),
  'gum-border': rule('gum the border', 'draw', 'dry, 15 mm at the sides and 25 mm at the ends at least'),
  draw: rule('draw', 'powder', 'the one who draws says so', { gummed: false, inked: false }),
  powder: rule('rosin, then talc', 'first-etch', 'dusted off, nothing loose'),
  'first-etch': rule('first etch', 'first-rest', endSigns.buff, { gummed: true, holdsFrom: 'end' }),
  'first-rest': rule('rest under gum', 'washout', 'the gum is dry and whole', {
    expected: practice(null, null, 'overnight; acid etches an hour at least'),
    waiting: true,
  }),
  washout: rule('washout', 'base', ghost, { expected: washing, gummed: true, inked: false }),
  base: rule('base', 'base-air', 'even and thin, buffed', { expected: rubbing, gummed: true }),
  'base-air': rule('air the base', 'base-rest', baseDry, { expected: airing, waiting: true }),
  'base-rest': rule('rest under base and gum', 'water', 'the base is hard, the gum whole', {
    expected: practice(null, null, 'rolled up about the next day'),
    waiting: true,
    optional: true,
  }),
  water: rule('take off the gum with water', 'roll-up', 'no gum left, an even film of water', {
    gummed: false,
    inked: false,
  }),
  'roll-up': rule('roll up', 'trial-proofs', clean, { gummed: false, inked: true }),
  'trial-proofs': rule('trial proofs', 'second-powder', 'two or so', {
    gummed: false,
    inked: true,
    optional: true,
  }),
  'second-powder': rule('ink full and dry, rosin, then talc', 'second-etch', 'dusted off, nothing loose', {
    gummed: false,
    inked: true,
  }),
  'second-etch': rule('second etch, full', 'second-rest', endSigns.buff, { gummed: true, holdsFrom: 'end' }),
  'second-etch-quick': rule('second etch, quick', 'proofs', endSigns.buff, {
    expected: practice(5 * minute, null, 'said to be good for 20–40 pulls: log what this room gets'),
    gummed: true,
    holdsFrom: 'end',
  }),
  'second-rest': rule('rest under gum', 'second-washout', 'the gum is dry and whole', {
    expected: practice(12 * hour, 24 * hour, 'after a full second etch'),
    waiting: true,
  }),
  'second-washout': rule('washout', 'second-base', ghost, { expected: washing, gummed: true, inked: false }),
  'second-base': rule('base', 'second-base-air', 'even and thin, buffed', {
    expected: rubbing,
    gummed: true,
  }),
  'second-base-air': rule('air the base', 'second-water', baseDry, { expected: airing, waiting: true }),
  'second-water': rule('take off the gum with water', 'second-roll-up', 'an even film of water', {
    gummed: false,
    inked: false,
  }),
  'second-roll-up': rule('roll up', 'proofs', clean, { gummed: false, inked: true }),
  proofs: rule('proofs until steady', 'good-to-print', 'two pulls alike, often the third or fourth', {
    gummed: false,
    inked: true,
  }),
  // a signature takes no gum off
  'good-to-print': rule('good-to-print', 'edition', 'signed by the artist', { inked: true }),
  edition: rule('edition', 'close-down', 'the count is reached', { gummed: false, inked: true }),
  'close-down': rule('close down', 'regrain', 'gummed, buffed tight and covered', {
    gummed: true,
    holdsFrom: 'end',
  }),
  regrain: rule('regrain', null, 'no old image in raking light', {
    gummed: false,
    inked: false,
    holdsFrom: 'end',
  }),
  hone: rule('hone', null, 'the mark is gone, the place feels like its neighbours'),
  scrape: rule('scrape', null, 'the mark is gone'),
  'spot-etch': rule('spot etch', null, endSigns.buff),
  'counter-etch': rule('counter-etch', null, 'rinsed and dry, the grain feels open', { gummed: false }),
  redraw: rule('redraw', null, 'the one who draws says so'),
};

/** What the line says of every stage, in its order, then of the corrections. */
export const lineStages: readonly LineRule[] = stagesOfLine.map((stage) => ({ stage, ...rules[stage] }));

const byStage = new Map(lineStages.map((one) => [one.stage, one]));

/** What the line says of a stage. */
export function lineRule(stage: LineStage): LineRule {
  return byStage.get(stage)!;
}

/** A stage as screens and other programs see it. */
export function stageRuleOf({ stage, name, expected, endSign, basis, mayBeSkipped }: LineRule): StageRule {
  return { stage, name, expected, endSign, basis, mayBeSkipped };
}
