import { liftSchema } from '../contract/lift.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { RoomAnswer } from '../records/roomAnswer.ts';
import { airClearing } from '../studio/room/clearing.ts';
import { dustSettling } from '../studio/room/dustSettling.ts';
import { lift } from '../studio/room/lift.ts';
import { type Arguments, type OptionList, readArguments, required } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

const airOptions: OptionList = { ach: '6', removal: '0.99' };
const settleOptions: OptionList = { micron: '5', density: '1.07', metres: '2' };
const liftOptions: OptionList = { json: 'in.json' };

/** `stonetone room air | settle | lift`: a figure about air or a lift as JSON, with what comes before it. */
export async function room(words: readonly string[]): Promise<number> {
  const [what, ...rest] = words;
  const answer = await answerOf(what, rest);
  if (!answer.ok) return reportFailure(answer.error);
  console.log(JSON.stringify(answer.value, null, 1));
  return exitDone;
}

async function answerOf(what: string | undefined, words: readonly string[]): Promise<Result<RoomAnswer>> {
  switch (what) {
    case 'air':
      return airOf(words);
    case 'settle':
      return settleOf(words);
    case 'lift':
      return liftOf(words);
    case undefined:
      return fail(failure('argument-missing', { name: 'what to ask', example: 'air, settle or lift' }));
    default:
      return fail(failure('argument-unknown', { name: what }));
  }
}

function airOf(words: readonly string[]): Result<RoomAnswer> {
  const given = readArguments(words, airOptions);
  if (!given.ok) return given;
  const changes = numberOf(
    given.value,
    'ach',
    airOptions,
    'a number above 0, at most 1000',
    (n) => n > 0 && n <= 1000,
  );
  if (!changes.ok) return changes;
  const removal = numberOf(
    given.value,
    'removal',
    airOptions,
    'a share above 0 and below 1',
    (n) => n > 0 && n < 1,
  );
  return removal.ok ? ok(airClearing(changes.value, removal.value)) : removal;
}

function settleOf(words: readonly string[]): Result<RoomAnswer> {
  const given = readArguments(words, settleOptions);
  if (!given.ok) return given;
  const micron = numberOf(
    given.value,
    'micron',
    settleOptions,
    'a diameter of 0.2 to 1000',
    (n) => n >= 0.2 && n <= 1000,
  );
  if (!micron.ok) return micron;
  const density = numberOf(
    given.value,
    'density',
    settleOptions,
    'g/cm³ above 0, at most 25',
    (n) => n > 0 && n <= 25,
  );
  if (!density.ok) return density;
  const metres = numberOf(
    given.value,
    'metres',
    settleOptions,
    'a height above 0, at most 100',
    (n) => n > 0 && n <= 100,
  );
  return metres.ok ? ok(dustSettling(micron.value, density.value, metres.value)) : metres;
}

async function liftOf(words: readonly string[]): Promise<Result<RoomAnswer>> {
  const given = readArguments(words, liftOptions);
  if (!given.ok) return given;
  const file = required(given.value, 'json', liftOptions.json!);
  if (!file.ok) return file;
  const question = await readJson(file.value, liftSchema, 'lift-malformed');
  return question.ok ? ok(lift(question.value)) : question;
}

/** The number of an option that must be there, inside its range. */
function numberOf(
  given: Arguments,
  name: string,
  options: OptionList,
  wanted: string,
  fits: (value: number) => boolean,
): Result<number> {
  const example = options[name]!;
  const text = required(given, name, example);
  if (!text.ok) return text;
  const value = text.value.trim() === '' ? Number.NaN : Number(text.value);
  if (fits(value)) return ok(value);
  const why = `${text.value} is not ${wanted}`;
  return fail(failure('argument-malformed', { name: `--${name}`, why, example: `--${name} ${example}` }));
}
