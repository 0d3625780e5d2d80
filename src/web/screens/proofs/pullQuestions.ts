import type { PullStep, PullTyped } from '../../managers/proofs/pullDraft.ts';

interface Question {
  readonly question: string;
  readonly why: string | null;
}

/** What a step asks, and why or how in a sentence. */
export function questionOf(step: PullStep, { number, photographs }: PullTyped): Question {
  switch (step) {
    case 'number':
      return { question: 'Which pull is it?', why: null };
    case 'photograph':
      return {
        question: `Photograph pull ${number}`,
        why: 'Square on, in the same even light each time, with clean paper all round it.',
      };
    case 'marks':
    case 'marks-again':
      return {
        question: 'Do the four marks sit right?',
        why: 'They say where the corners of the work rectangle came to lie; to 10 mm is near enough. A print is the stone’s mirror image: mark 1 is at its top right.',
      };
    case 'chips':
    case 'chips-again':
      return {
        question: 'Where do the grey chips lie?',
        why: 'Chips of known density tell what the camera made of light and dark: only with them can pulls be compared by how strong their solids are. Three or more, from white to black.',
      };
    case 'again':
      return photographs.length > 1
        ? {
            question: 'It is photographed twice',
            why: 'Two readings of one sheet tell how far one reading can be trusted.',
          }
        : {
            question: 'Set it down afresh and take it again',
            why: 'Take the sheet away, lay it down anew, photograph it once more. That tells how far one reading can be trusted, and whether a change is only the photograph.',
          };
    case 'lights':
      return { question: 'How dark are the lights?', why: byEye };
    case 'middles':
      return { question: 'How dark are the middles?', why: byEye };
    case 'darks':
      return { question: 'How dark are the darks?', why: byEye };
    case 'age':
      return {
        question: 'How long ago was it pulled?',
        why: 'Ink changes as it dries: only pulls of one age are compared.',
      };
    case 'paper':
      return {
        question: 'Which paper?',
        why: 'Papers are never compared with each other, nor damp with dry.',
      };
    case 'ink':
      return { question: 'Which ink and roller?', why: null };
    case 'rolling':
      return {
        question: 'How was it inked?',
        why: 'Charges of ink on the roller, and passes for each charge.',
      };
    case 'press':
      return { question: 'How was the press set?', why: 'Eighths of a turn from contact, and the packing.' };
    case 'who':
      return { question: 'Who pulled it?', why: null };
    case 'remarks':
      return { question: 'Anything to remark?', why: null };
    default:
      return step satisfies never;
  }
}

const byEye =
  'Lay the hatch scale beside it, step back to arm’s length, and pick the step that is neither lighter nor darker.';
