import { liftSchema } from '../contract/lift.ts';
import { vapourQuestionSchema } from '../contract/roomQuestion.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { RoomAnswer } from '../records/roomAnswer.ts';
import { airClearing } from '../studio/room/clearing.ts';
import { dustSettling } from '../studio/room/dustSettling.ts';
import { lift } from '../studio/room/lift.ts';
import { vapourPeak } from '../studio/room/vapourPeak.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { readJson } from './readJson.ts';
import { reportFailure } from './report.ts';

/** A number that a question needs: how it looks, and what it may be. */
interface AskedNumber {
  readonly example: string;
  readonly wanted: string;
  readonly fits: (value: number) => boolean;
}

const airNumbers = {
  'air-changes': { example: '6', wanted: 'a number above 0, at most 1000', fits: (n) => n > 0 && n <= 1000 },
  removal: { example: '0.99', wanted: 'a share above 0 and below 1', fits: (n) => n > 0 && n < 1 },
} satisfies Record<string, AskedNumber>;

const settleNumbers = {
  micron: { example: '5', wanted: 'a diameter of 0.2 to 1000', fits: (n) => n >= 0.2 && n <= 1000 },
  density: { example: '1.07', wanted: 'g/cm³ above 0, at most 25', fits: (n) => n > 0 && n <= 25 },
  metres: { example: '2', wanted: 'a height above 0, at most 100', fits: (n) => n > 0 && n <= 100 },
} satisfies Record<string, AskedNumber>;

const fileOptions: OptionList = { json: 'in.json' };

/** `stonetone room air | settle | vapour | lift`: a figure about air or a lift as JSON, with what comes before it. */
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
    case 'vapour':
      return vapourOf(words);
    case 'lift':
      return liftOf(words);
    case undefined:
      return fail(
        failure('argument-missing', { name: 'what to ask', example: 'air, settle, vapour or lift' }),
      );
    default:
      return fail(failure('argument-unknown', { name: what }));
  }
}

function airOf(words: readonly string[]): Result<RoomAnswer> {
  const given = readNumbers(words, airNumbers);
  return given.ok ? ok(airClearing(given.value['air-changes'], given.value.removal)) : given;
}

function settleOf(words: readonly string[]): Result<RoomAnswer> {
  const given = readNumbers(words, settleNumbers);
  if (!given.ok) return given;
  const { micron, density, metres } = given.value;
  return ok(dustSettling(micron, density, metres));
}

async function liftOf(words: readonly string[]): Promise<Result<RoomAnswer>> {
  const file = fileOf(words);
  if (!file.ok) return file;
  const question = await readJson(file.value, liftSchema, 'lift-malformed');
  return question.ok ? ok(lift(question.value)) : question;
}

async function vapourOf(words: readonly string[]): Promise<Result<RoomAnswer>> {
  const file = fileOf(words);
  if (!file.ok) return file;
  const asked = vapourQuestionSchema.omit({ kind: true });
  const question = await readJson(file.value, asked, 'vapour-malformed');
  return question.ok ? ok(vapourPeak(question.value)) : question;
}

function fileOf(words: readonly string[]): Result<string> {
  const given = readArguments(words, fileOptions);
  return given.ok ? required(given.value, 'json', fileOptions.json!) : given;
}

/** The numbers asked for, every one of which must be given and lie inside its range; the first that fails is told. */
function readNumbers<Name extends string>(
  words: readonly string[],
  asked: Readonly<Record<Name, AskedNumber>>,
): Result<Record<Name, number>> {
  const numbers = Object.entries<AskedNumber>(asked);
  const given = readArguments(
    words,
    Object.fromEntries(numbers.map(([name, { example }]) => [name, example])),
  );
  if (!given.ok) return given;
  const values: Record<string, number> = {};
  for (const [name, { example, wanted, fits }] of numbers) {
    const text = required(given.value, name, example);
    if (!text.ok) return text;
    const value = text.value.trim() === '' ? Number.NaN : Number(text.value);
    if (!fits(value)) {
      const why = `${text.value} is not ${wanted}`;
      return fail(failure('argument-malformed', { name: `--${name}`, why, example: `--${name} ${example}` }));
    }
    values[name] = value;
  }
  return ok(values as Record<Name, number>);
}
