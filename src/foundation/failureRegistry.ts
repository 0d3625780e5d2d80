interface FailureEntry {
  readonly sentence: string;
  readonly remedy: string;
}

/**
 * The one registry of modelled failures: code, sentence, what to do.
 * HTTP status lives in `server`, exit status in `cli`, each as an exhaustive record over these codes.
 */
export const failureRegistry = {
  'argument-missing': { sentence: 'The argument {name} is missing.', remedy: 'Give {name}; {example}.' },
  'argument-unknown': {
    sentence: 'The argument {name} is not known.',
    remedy: 'See stonetone help for the arguments.',
  },
  'argument-malformed': { sentence: '{name} could not be read: {why}.', remedy: 'Write it like {example}.' },
  'size-invalid': {
    sentence: 'The size {given} of the work rectangle is not usable: {why}.',
    remedy: 'Give width x height in millimetres, such as 300x400.',
  },
  'corners-malformed': {
    sentence: 'The corners on the {photo} photograph are not four points.',
    remedy: 'Give four points, clockwise from top left, such as "10,10 990,12 985,1300 8,1295".',
  },
  'corners-crossed': {
    sentence: 'The outline through the corners on the {photo} photograph crosses over or folds inward.',
    remedy: 'Set the four corners in order, one after the other round the rectangle.',
  },
  'corners-anticlockwise': {
    sentence: 'The corners on the stone photograph run anticlockwise.',
    remedy: 'Give them clockwise: top left, top right, bottom right, bottom left, as one looks at the stone.',
  },
  'corners-outside': {
    sentence: 'Corner {corner} on the {photo} photograph lies outside the picture ({width} x {height} px).',
    remedy: 'Set every corner inside the picture.',
  },
  'corners-collinear': {
    sentence: 'The corners on the {photo} photograph lie almost on one line.',
    remedy: 'Set the four corners of the work rectangle, not points along one side.',
  },
  'corners-not-found': {
    sentence: 'No rectangle could be found on the {photo} photograph: {why}.',
    remedy: 'Set its four corners by hand.',
  },
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
  'zones-malformed': {
    sentence: 'The zones could not be read: {why}.',
    remedy: 'See docs for the form of zones.json.',
  },
  'zone-outside': {
    sentence: 'Zone {id} reaches outside the work rectangle ({width} x {height} mm).',
    remedy: 'Keep every point of a zone inside the rectangle.',
  },
  'zone-self-crossing': {
    sentence: 'The outline of zone {id} crosses itself.',
    remedy: 'Draw the outline once round, without crossing.',
  },
  'zone-degenerate': {
    sentence: 'Zone {id} has no area.',
    remedy: 'Give at least three points that enclose an area.',
  },
  'zone-duplicate': { sentence: 'Two zones carry the id {id}.', remedy: 'Give every zone an id of its own.' },
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
  cancelled: { sentence: 'The measurement was cancelled.', remedy: 'Start it again when you are ready.' },
  'not-found': { sentence: 'There is no {what} here.', remedy: 'Go back to the list and choose again.' },
  'stale-save': {
    sentence:
      'Somebody saved {what} since you opened it: you started from version {yours}, it is now at {kept}.',
    remedy: 'What you typed is still here: compare it with what is kept now, then save again.',
  },
  archived: { sentence: '{what} is archived.', remedy: 'Bring it back first, then change it.' },
  'reference-unknown': {
    sentence: 'There is no {what} with the id {id}.',
    remedy: 'Choose one from the list.',
  },
  'name-taken': { sentence: 'There is a {what} called {name} already.', remedy: 'Give it another name.' },
  'stone-in-use': {
    sentence: 'The stone {name} carries the work {work}.',
    remedy: 'Archive the work first, or keep the stone.',
  },
  'stone-too-small': {
    sentence: 'At {width} x {height} mm the stone would no longer hold {part} of the work {work}.',
    remedy: 'Correct the size, or the zones of that work first.',
  },
  'rectangle-off-stone': {
    sentence: 'The work rectangle reaches outside the stone ({width} x {height} mm).',
    remedy: 'Give an offset and a size that lie on the stone, in millimetres.',
  },
  'medium-in-use': {
    sentence: 'The medium {name} is used {where}.',
    remedy: 'Give those zones another medium first.',
  },
  'medium-fixed': {
    sentence: 'The medium {name} belongs to the catalogue that every studio starts with.',
    remedy: 'Add a medium of your own instead.',
  },
  'table-fixed': {
    sentence: 'The table {name} is one that every studio starts with and stays as it is.',
    remedy: 'Make a copy of it and edit that.',
  },
  'host-refused': {
    sentence: 'The address {host} is not one this program answers to.',
    remedy: 'Open the address that the program printed when it started.',
  },
  'origin-refused': {
    sentence: 'A page from {origin} may not use this program.',
    remedy: 'Open the address that the program printed when it started.',
  },
  'host-not-loopback': {
    sentence: 'The address {host} would open the program to other machines.',
    remedy: 'Use 127.0.0.1.',
  },
  'upload-too-large': {
    sentence: '{file} is larger than {limit} MB.',
    remedy: 'Export the photograph at a smaller size or a lower JPEG quality.',
  },
  'upload-malformed': {
    sentence: 'The upload could not be read: {why}.',
    remedy: 'Send one photograph as the field "photograph" of a multipart form.',
  },
  'body-malformed': {
    sentence: 'What was sent could not be read: {why}.',
    remedy: 'Correct the field and send again.',
  },
  'body-too-large': {
    sentence: 'What was sent is larger than {limit} MB.',
    remedy: 'Send fewer zones or chips.',
  },
  'photograph-unknown': {
    sentence: 'The {use} photograph is not kept here.',
    remedy: 'Add the photograph first, then name it by its id.',
  },
  'listeners-too-many': {
    sentence: 'Too many pages listen for changes already.',
    remedy: 'Close some of the pages that show this program.',
  },
  'photographs-same': {
    sentence: 'Stone and print are the same photograph.',
    remedy: 'Choose the photograph of the stone on one side and that of the print on the other.',
  },
  'measuring-crashed': {
    sentence: 'The measurement stopped before it was done: {why}.',
    remedy: 'Start it again; if it stops again, try smaller photographs.',
  },
  'data-folder-unusable': {
    sentence: 'The data folder {folder} cannot be used: {why}.',
    remedy: 'Choose another folder with --data, or free space and rights on this one.',
  },
  'storage-full': {
    sentence: 'The disk takes nothing more ({why}): this was not kept.',
    remedy: 'Free space on the disk, then send it again; all that was acknowledged is there.',
  },
  'data-folder-busy': {
    sentence: 'The data folder {folder} is in use by another running Stonetone.',
    remedy: 'Use the one that runs already, or stop it first.',
  },
  'database-damaged': {
    sentence: 'The database in {folder} is damaged: {why}.',
    remedy:
      'Leave it as it is, and put your last good backup into another folder: stonetone restore FILE --data DIR.',
  },
  'database-newer': {
    sentence: 'The database in {folder} was written by a newer Stonetone.',
    remedy: 'Start the newer version, or choose another folder with --data.',
  },
  'port-in-use': {
    sentence: 'Port {port} is in use by another program.',
    remedy: 'Choose another with --port, or 0 for any free one.',
  },
  internal: {
    sentence: 'Something went wrong inside: {why}.',
    remedy: 'Try again; if it stays, tell the maintainers.',
  },
  'plan-malformed': {
    sentence: 'The work to plan could not be read: {why}.',
    remedy: 'Mend {field}; docs/formats.md shows the form.',
  },
  'stone-impossible': {
    sentence: 'A stone of {width} x {height} x {thickness} mm is not possible here: {why}.',
    remedy: 'Give width, height and thickness in millimetres, such as 400, 500 and 80.',
  },
  'zone-off-stone': {
    sentence: 'Zone {id} reaches outside the stone ({width} x {height} mm).',
    remedy: 'Keep every point of a zone on the stone.',
  },
  'zone-id-reserved': {
    sentence: 'A zone carries the id ground, which means the stone outside all zones.',
    remedy: 'Give that zone another id.',
  },
  'table-malformed': {
    sentence: 'The etch table could not be used: {why}.',
    remedy: 'Name tannic or acid-in-gum, or mend {field} in your table; docs/formats.md shows the form.',
  },
  'mixture-malformed': {
    sentence: 'The mixing question could not be read: {why}.',
    remedy: 'See docs/formats.md for the kinds of question and what each needs.',
  },
  'mixture-impossible': {
    sentence: 'No such mixture can be made: {why}.',
    remedy: 'Check the strengths and amounts.',
  },
  'lift-malformed': {
    sentence: 'The lift could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'series-malformed': {
    sentence: 'The series of pulls could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'backup-unknown': {
    sentence: '{file} is no backup of Stonetone, or its beginning is damaged: {why}.',
    remedy: 'Give a file that stonetone backup wrote.',
  },
  'backup-newer': {
    sentence: 'The backup {file} was written by a newer Stonetone.',
    remedy: 'Use the newer version.',
  },
  'backup-cut-off': {
    sentence: 'The backup {file} ends too early, after {part}.',
    remedy: 'Copy it again from where it was made, or use an earlier backup.',
  },
  'backup-damaged': {
    sentence: 'The backup {file} is damaged: {why}.',
    remedy: 'Copy it again from where it was made, or use an earlier backup.',
  },
  'data-folder-missing': {
    sentence: 'There is no data folder of Stonetone at {folder}: it holds no {file}.',
    remedy: 'Give the folder that stonetone serve uses.',
  },
  'file-taken': {
    sentence: 'There is a file {file} already.',
    remedy: 'Give a name that is free; no file is replaced.',
  },
  'folder-taken': {
    sentence: 'The folder {folder} holds something already: {found}.',
    remedy: 'Give a folder that is empty or not there yet; nothing is replaced.',
  },
  'disk-full': {
    sentence: 'The disk of {folder} takes nothing more ({why}): nothing was left there.',
    remedy: 'Free space on it, or choose a place on another disk.',
  },
} as const satisfies Record<string, FailureEntry>;

export type FailureCode = keyof typeof failureRegistry;
