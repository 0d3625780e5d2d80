import type { PullStep, PullTyped } from '../../managers/proofs/pullDraft.ts';
import { lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';

interface Question {
  readonly question: string;
  readonly why: string | null;
}

/** What a step asks, and why or how in a sentence. */
export function questionOf(step: PullStep, { number, photographs }: PullTyped): Question {
  switch (step) {
    case 'number':
      return { question: say('Which pull is it?'), why: null };
    case 'photograph':
      return {
        question: say('Photograph pull {number}', { number }),
        why: say('Square on, in the same even light each time, with clean paper all round it.'),
      };
    case 'marks':
    case 'marks-again':
      return {
        question: say('Do the four marks sit right?'),
        why: say(
          'They say where the corners of the work rectangle came to lie; to {near} is near enough. A print is the stone’s mirror image: mark 1 is at its top right.',
          { near: lengthWords(10) },
        ),
      };
    case 'chips':
    case 'chips-again':
      return {
        question: say('Where do the grey chips lie?'),
        why: say(
          'Chips of known density tell what the camera made of light and dark: only with them can pulls be compared by how strong their solids are. Three or more, from white to black.',
        ),
      };
    case 'again':
      return photographs.length > 1
        ? {
            question: say('It is photographed twice'),
            why: say('Two readings of one sheet tell how far one reading can be trusted.'),
          }
        : {
            question: say('Set it down afresh and take it again'),
            why: say(
              'Take the sheet away, lay it down anew, photograph it once more. That tells how far one reading can be trusted, and whether a change is only the photograph.',
            ),
          };
    case 'lights':
      return { question: say('How dark are the lights?'), why: byEye };
    case 'middles':
      return { question: say('How dark are the middles?'), why: byEye };
    case 'darks':
      return { question: say('How dark are the darks?'), why: byEye };
    case 'age':
      return {
        question: say('How long ago was it pulled?'),
        why: say('Ink changes as it dries: only pulls of one age are compared.'),
      };
    case 'paper':
      return {
        question: say('Which paper?'),
        why: say('Papers are never compared with each other, nor damp with dry.'),
      };
    case 'ink':
      return { question: say('Which ink and roller?'), why: null };
    case 'rolling':
      return {
        question: say('How was it inked?'),
        why: say('Charges of ink on the roller, and passes for each charge.'),
      };
    case 'press':
      return {
        question: say('How was the press set?'),
        why: say('Eighths of a turn from contact, and the packing.'),
      };
    case 'who':
      return { question: say('Who pulled it?'), why: null };
    case 'remarks':
      return { question: say('Anything to remark?'), why: null };
    default:
      return step satisfies never;
  }
}

const byEye = say(
  'Lay the hatch scale beside it, step back to arm’s length, and pick the step that is neither lighter nor darker.',
);
