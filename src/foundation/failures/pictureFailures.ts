import type { FailureEntry } from './failureEntry.ts';

/** What may be wrong with a photograph, a file or its grey chips. */
export const pictureFailures = {
  'file-missing': { sentence: 'The file {file} is not there.', remedy: 'Check the name and the folder.' },
  'file-unreadable': {
    sentence: '{file} cannot be read: {why}.',
    remedy: 'Give a file that you may read.',
  },
  'file-empty': {
    sentence: 'The file {file} is empty.',
    remedy: 'Copy the photograph again from the camera.',
  },
  'picture-unknown-kind': {
    sentence: '{file} is not a picture that can be read here ({found}).',
    remedy: 'Give a JPEG, PNG, TIFF, WebP or HEIC photograph.',
  },
  'picture-damaged': {
    sentence: '{file} is damaged or cut off: {why}.',
    remedy: 'Copy the photograph again from the camera.',
  },
  'picture-cmyk': {
    sentence: '{file} holds printing colours (CMYK), from which light cannot be measured.',
    remedy: 'Give the photograph as the camera made it, or exported as RGB.',
  },
  'picture-animated': {
    sentence: '{file} holds more than one picture.',
    remedy: 'Give a single still photograph.',
  },
  'picture-too-large': {
    sentence: '{file} is {width} x {height} px; at most {limit} megapixels are read.',
    remedy: 'Export the photograph at a smaller size.',
  },
  'picture-coding': {
    sentence: '{file} holds {what}, from which light cannot be measured.',
    remedy: 'Export the photograph as RGB or grey with 8 or 16 bits.',
  },
  'file-too-large': {
    sentence: '{file} has {megabytes} MB; files of at most {limit} MB are read.',
    remedy: 'Export the photograph as a smaller file, such as a JPEG of high quality.',
  },
  'picture-too-small': {
    sentence: '{file} is only {width} x {height} px, too small to measure anything.',
    remedy: 'Give the photograph at full size.',
  },
  'picture-too-slow': {
    sentence: '{file} was not read within {seconds} s and was given up.',
    remedy: 'Try again when less is going on; if it happens again, export the photograph as a JPEG.',
  },
  'chips-malformed': {
    sentence: 'The chips could not be read: {why}.',
    remedy: 'See docs for the form of chips.json.',
  },
  'chip-outside': {
    sentence: 'Chip {name} lies outside the {photo} photograph.',
    remedy: 'Outline every chip inside its picture.',
  },
  'output-unwritable': {
    sentence: 'The folder {folder} cannot be written: {why}.',
    remedy: 'Choose another folder.',
  },
  'photograph-unknown': {
    sentence: 'The {use} photograph is not kept here.',
    remedy: 'Add the photograph first, then name it by its id.',
  },
  'photographs-same': {
    sentence: 'Stone and print are the same photograph.',
    remedy: 'Choose the photograph of the stone on one side and that of the print on the other.',
  },
  'measuring-crashed': {
    sentence: 'The measurement stopped before it was done: {why}.',
    remedy: 'Start it again; if it stops again, try smaller photographs.',
  },
} as const satisfies Record<string, FailureEntry>;
