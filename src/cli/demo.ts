import { readdir } from 'node:fs/promises';
import { resolve } from 'node:path';
import { openServices } from '../application/openServices.ts';
import { failure } from '../foundation/failure.ts';
import { saltreachClock, writeYear } from '../sample/saltreach/year/writeYear.ts';
import { uploadLimitBytes } from '../server/limits.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';

export const demoOptions: OptionList = { data: './year' };

/** `stonetone demo year`: writes a year of the invented studio into an empty folder. */
export async function demo(words: readonly string[]): Promise<number> {
  const given = readArguments(words, demoOptions, 1);
  if (!given.ok) return reportFailure(given.error);
  const { word } = given.value;
  if (word === null)
    return reportFailure(failure('argument-missing', { name: 'what', example: 'such as year' }));
  if (word !== 'year') return reportFailure(failure('argument-unknown', { name: word }));
  const data = required(given.value, 'data', demoOptions.data!);
  if (!data.ok) return reportFailure(data.error);
  const dataFolder = resolve(data.value);
  const found = await firstIn(dataFolder);
  if (found !== null) return reportFailure(failure('folder-taken', { folder: dataFolder, found }));
  const clock = saltreachClock();
  const opened = await openServices({ dataFolder, largestBytes: uploadLimitBytes, now: clock.now });
  if (!opened.ok) return reportFailure(opened.error);
  try {
    await writeYear(opened.value, clock);
  } finally {
    await opened.value.close();
  }
  console.log(
    `Wrote a year of Saltreach to ${dataFolder}. Look at it with: stonetone serve --data ${dataFolder}`,
  );
  return exitDone;
}

/** Something that a folder holds; null where it is empty or not there. */
async function firstIn(folder: string): Promise<string | null> {
  return readdir(folder).then(
    ([first]) => first ?? null,
    () => null,
  );
}
