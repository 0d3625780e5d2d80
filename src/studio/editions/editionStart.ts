import type { EditionStart } from '../../records/editionStart.ts';
import type { KitEntry } from '../../records/kit.ts';
import type { Pull } from '../../records/pull.ts';
import type { Approval } from '../../records/workSeries.ts';
import { pullPaper } from '../proofs/pullPaper.ts';
import type { InkedArea } from './inkedArea.ts';

/** What an edition may start from. */
export interface StartingGrounds {
  /** Good to print as it stands, with its pull; null: no pull is. */
  readonly approved: {
    readonly pull: Pull;
    readonly approval: Pick<Approval, 'artist' | 'printer' | 'photograph' | 'tones'>;
  } | null;
  /** Its paper as the kit has it; null: not of the kit. */
  readonly paper: KitEntry | null;
  readonly inked: InkedArea | null;
}

/** Paper, ink and inked area of the pull that is good to print, each with where it comes from. */
export function editionStart({ approved, paper, inked }: StartingGrounds): EditionStart {
  const cm2 = inked && { ...inked.cm2, value: roundedCm2(inked.cm2.value) };
  if (approved === null) {
    const nothing = {
      paperName: null,
      gramsPerM2: null,
      damped: null,
      ink: null,
      approvedBy: null,
      approval: null,
    };
    const inkedCm2 = cm2 && { value: cm2, from: inkedFrom(inked!, null) };
    return { pull: null, ...nothing, inkedCm2 };
  }
  const { pull, approval } = approved;
  const { number } = pull;
  const grams = paper?.tool === 'paper' ? paper.gramsPerM2 : null;
  const marks = [approval.artist, approval.printer].filter((mark) => mark !== '').join(', ');
  return {
    pull: { id: pull.id, number },
    paperName: { value: pullPaper(pull), from: `Pull ${number}, good to print, is on it.` },
    gramsPerM2: grams === null ? null : { value: grams, from: 'As the kit has this paper.' },
    damped:
      pull.damp === null
        ? null
        : {
            value: pull.damp ? 'yes' : 'no',
            from: pull.damp
              ? `Pull ${number}, good to print, was printed damp.`
              : `Pull ${number}, good to print, was printed dry.`,
          },
    ink: pull.ink && { value: pull.ink.words, from: `Pull ${number}, good to print, was printed with it.` },
    inkedCm2: cm2 && { value: cm2, from: inkedFrom(inked!, number) },
    approvedBy: marks === '' ? null : { value: marks, from: `Their marks stand on pull ${number}.` },
    approval:
      approval.photograph === null
        ? { value: approval.tones, from: `Pull ${number}, as told by eye.` }
        : null,
  };
}

function inkedFrom({ how, cm2: { low, high, warnings } }: InkedArea, number: number | null): string {
  switch (how) {
    case 'print': {
      const bounds = `${roundedCm2(low)} to ${roundedCm2(high)} cm²`;
      return [
        `Read on pull ${number}, good to print; the truth lies within ${bounds}, 19 times of 20.`,
        ...warnings,
      ].join(' ');
    }
    case 'drawing':
      return 'From the drawing’s zones and their tones; no print was read for it.';
    case 'whole':
      return 'The drawn zones as if covered whole: an upper bound.';
    default:
      return how satisfies never;
  }
}

function roundedCm2(cm2: number): number {
  return cm2 < 10 ? Math.round(cm2 * 10) / 10 : Math.round(cm2);
}
