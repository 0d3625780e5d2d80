import type { Cause, FeatureName } from '../../../records/suspects.ts';

/** What a feature adds to the log odds of a cause where it is seen, and where it is surely absent. Natural logarithms. */
export type Weights = readonly [seen: number, absent: number];

export interface CauseRow {
  readonly name: string;
  readonly weights: Readonly<Partial<Record<FeatureName, Weights>>>;
}

/** Where every cause starts before anything was seen: about 1 in 15. Our rule. */
export const startingLogOdds = -2.7;

/**
 * The suspects and what speaks for and against them. Common practice, no source: a printer's judgement put into
 * numbers, and mended on the fitting simulations, which are not those that score it. +2 makes a cause about seven times likelier, −2 as much less likely. A feature that is
 * not named says nothing about a cause.
 */
export const causeTable: Readonly<Record<Cause, CauseRow>> = {
  burn: {
    name: 'the etch burnt the lights',
    weights: {
      unevenAllOver: [-1.5, 0.1],
      lightsLostInPatches: [2.5, -3],
      patchesStay: [1.5, -2],
      lightsReturn: [-2.5, 0.5],
      wholeTonesGone: [-2, 0.2],
      etchOverrun: [2.5, -0.5],
    },
  },
  'gum-blind': {
    name: 'gum dried over the lights',
    weights: {
      unevenAllOver: [-1.5, 0.1],
      lightsLostInPatches: [2.5, -3],
      lightsReturn: [2, -1.2],
      patchesStay: [-1, 0.4],
      missingGrows: [0.7, 0],
      wholeTonesGone: [-2, 0.2],
      etchOverrun: [-0.7, 0.2],
    },
  },
  'short-roll-up': {
    name: 'the roll-up was too short',
    weights: {
      unevenAllOver: [-1.5, 0.1],
      lightsLow: [3, -3],
      lightsReturn: [1.5, -0.8],
      lightsLostInPatches: [-1, 0.2],
      rollUpShort: [2.5, -0.4],
    },
  },
  'poor-base': {
    name: 'the base was poor or missed there, or gum lay under it',
    weights: {
      unevenAllOver: [-0.5, 0.1],
      wholeTonesGone: [3.5, -3],
      patchesStay: [0.5, -0.8],
      baseSkipped: [2.5, -0.4],
    },
  },
  hollow: {
    name: 'a hollow, debris or packing under one place',
    weights: {
      unevenAllOver: [-1.5, 0.1],
      paleSoftPatch: [3.5, -3],
      wholeTonesGone: [-1, 0.2],
      haloBesideDarks: [-1, 0.1],
      otherStructure: [-1.2, 0.1],
    },
  },
  'too-much-ink': {
    name: 'too much ink, or ink too soft or warm',
    weights: {
      darksClosed: [2.5, -3],
      darksGrow: [1.5, -1],
      secondEdge: [-1, 0.1],
      middlesGain: [-1, 0.4],
      bareGrey: [-0.7, 0.2],
      etchShort: [-0.7, 0.1],
    },
  },
  'pressure-high': {
    name: 'too much pressure',
    weights: {
      darksClosed: [2, -2.5],
      middlesGain: [2.5, -1.7],
      darksGrow: [-1.5, 0.4],
      secondEdge: [-2, 0.2],
    },
  },
  'weak-etch': {
    name: 'the etch was too weak for the darks',
    weights: {
      darksClosed: [2, -2.7],
      bareGrey: [2, -1.5],
      middlesGain: [-0.7, 0.2],
      secondEdge: [-1, 0.1],
      etchShort: [2.5, -0.4],
    },
  },
  'pressure-low': {
    name: 'too little pressure, packing amiss or paper too dry',
    weights: { printPale: [3, -3], stonePale: [-2.5, 0.7] },
  },
  starved: { name: 'the stone is starved of ink', weights: { printPale: [2, -2.5], stonePale: [3, -2.5] } },
  'border-bare': {
    name: 'the border was not gummed, or dried',
    weights: { borderGrey: [4, -3], borderSkipped: [2, -0.3] },
  },
  tint: {
    name: 'tint: ink mixed into the water',
    weights: {
      bareGrey: [2.5, -3],
      bareShapes: [-1.4, 0.1],
      bareGrows: [0.8, -0.5],
      darksClosed: [-0.7, 0.1],
      ungummedPause: [-0.7, 0.1],
    },
  },
  scum: {
    name: 'scum: the gum is failing',
    weights: {
      bareGrey: [2.5, -3],
      bareShapes: [-1.4, 0.1],
      bareGrows: [0.8, -0.5],
      darksClosed: [-0.7, 0.1],
      ungummedPause: [2.5, -0.3],
    },
  },
  'scraper-nick': {
    name: 'a nick in the scraper',
    weights: { unevenAllOver: [-1.5, 0.1], streakAlong: [3.6, -3], streakDarker: [0.5, 0] },
  },
  'bed-grit': {
    name: 'grit on the bed',
    weights: {
      unevenAllOver: [-1.5, 0.1],
      streakAlong: [3.3, -3.3],
      streakDarker: [-2, 0.35],
      paleSpots: [0.3, 0],
    },
  },
  tympan: {
    name: 'dents or debris in the tympan',
    weights: { unevenAllOver: [-1.5, 0.1], paleSpots: [3.5, -3], otherStructure: [-2.5, 0.2] },
  },
  'uneven-pressure': {
    name: 'uneven pressure: scraper, packing, bed or a wedge of a stone',
    weights: {
      unevenAllOver: [-2, 0.1],
      gradientAcross: [3.5, -2.7],
      gradientAlong: [0.3, 0],
      otherStructure: [-1.2, 0.1],
    },
  },
  'uneven-rolling': {
    name: 'rolled unevenly from end to end',
    weights: { unevenAllOver: [-2, 0.1], gradientAlong: [3.5, -2.7], otherStructure: [-1.2, 0.1] },
  },
  'roller-lap': {
    name: 'the lap of the roller',
    weights: {
      unevenAllOver: [-1.2, 0.1],
      bandsRepeat: [3.5, -3],
      bandOnce: [-0.5, 0.1],
      otherStructure: [-1.2, 0.1],
    },
  },
  'press-stop': {
    name: 'the press stopped, or the roller was set down',
    weights: { unevenAllOver: [-1.2, 0.1], bandOnce: [3.5, -3], bandsRepeat: [-1.2, 0.1] },
  },
  'dirty-roller': {
    name: 'the roller carries the drawing round',
    weights: {
      ghostExplains: [5, -3],
      ghostRepeat: [0.7, -0.1],
      bareShapes: [0.7, -0.1],
      smear: [-2, 0.1],
      tailsOffDarks: [0.5, 0],
      bareGrey: [0.6, 0],
    },
  },
  'paper-moved': {
    name: 'the paper moved',
    weights: {
      secondEdge: [3.5, -3],
      smear: [-0.8, 0.4],
      darksClosed: [0.5, 0],
      middlesGain: [0.5, 0],
      tailsOffDarks: [0.5, 0],
      stopOutPrints: [0.5, 0],
    },
  },
  slur: {
    name: 'slur: the tympan drags',
    weights: {
      secondEdge: [1, -2.5],
      smear: [3, -1],
      darksClosed: [0.5, 0],
      middlesGain: [0.5, 0],
      tailsOffDarks: [0.5, 0],
      stopOutPrints: [0.5, 0],
    },
  },
  'old-image': {
    name: 'an older drawing is still in the stone',
    weights: { bareShapes: [3.9, -3], ghostExplains: [-3, 0.2], tailsOffDarks: [-0.3, 0] },
  },
  'etch-crept': {
    name: 'strong etch crept into lighter work',
    weights: { haloBesideDarks: [3.5, -3], paleSoftPatch: [0.5, 0], otherStructure: [0.5, 0] },
  },
  'medium-lost': {
    name: 'a medium that never took, or was lost in the etch',
    weights: { zoneBlank: [4.5, -3.5] },
  },
  smudge: {
    name: 'smudged: too much ink, no powder, or wet buffing',
    weights: {
      tailsOffDarks: [3.5, -1.5],
      secondEdge: [-1.5, 0.1],
      stopOutPrints: [0.5, 0],
      powderSkipped: [2, -0.3],
    },
  },
  'stop-out-failed': { name: 'a stop-out did not hold', weights: { stopOutPrints: [4.5, -3.5] } },
  photograph: {
    name: 'the photograph, not the print',
    weights: { photographDoubt: [4, -2], otherStructure: [0.5, -0.2] },
  },
};

/** A cause explains a feature that is seen where it weighs at least so much for it. */
export const explainingWeight = 0.4;

/** Faults that leave tones uneven by themselves, beside the sign that they go by. From the fitting simulations. */
export const unevenCauses: Readonly<Partial<Record<FeatureName, readonly Cause[]>>> = {
  otherStructure: ['burn', 'gum-blind', 'short-roll-up', 'poor-base', 'etch-crept', 'slur'],
  unevenAllOver: ['poor-base', 'etch-crept'],
};
