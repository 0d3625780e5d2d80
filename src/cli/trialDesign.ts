import { scatterOfRoom } from '../application/trials/scatterOfRoom.ts';
import { trialDesignFileNames, trialDesignFiles } from '../application/trials/trialDesignFiles.ts';
import { trialWishSchema } from '../contract/trialWish.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { CheapestTrial, RoomScatter, TrialDesign, TrialPower } from '../records/trialDesign.ts';
import { designCautions } from '../studio/trials/design/designCautions.ts';
import { designTrial } from '../studio/trials/design/designTrial.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { checkFolder, writeFolder } from './outputFolder.ts';
import { readJson } from './readJson.ts';
import { readPaper } from './readPaper.ts';

const options: OptionList = { out: 'trial', paper: 'a4', data: './data' };

/**
 * `stonetone trial design spec.json --out DIR [--data DIR]`: lays a test stone out and writes it; with a data folder, which may be
 * served meanwhile, by how this room's own patches scatter. @returns what is told at the end.
 */
export async function trialDesign(words: readonly string[]): Promise<Result<string>> {
  const given = readArguments(words, options, 1);
  if (!given.ok) return given;
  const file = given.value.word;
  if (!file)
    return fail(failure('argument-missing', { name: 'what is wanted', example: 'such as spec.json' }));
  const out = required(given.value, 'out', options.out!);
  if (!out.ok) return out;
  const writable = await checkFolder(out.value);
  if (!writable.ok) return writable;
  const paper = readPaper(given.value.options.get('paper'));
  if (!paper.ok) return paper;
  const wish = await readJson(file, trialWishSchema, 'trial-wish-malformed');
  if (!wish.ok) return wish;
  const data = given.value.options.get('data');
  const room = data === undefined ? ok(null) : await scatterOfRoom(data);
  if (!room.ok) return room;
  const designed = designTrial({ ...wish.value, scatter: wish.value.scatter ?? room.value?.scatter ?? null });
  if (!designed.ok) return designed;
  const files = await trialDesignFiles(designed.value, paper.value, new Date());
  const written = await writeFolder(out.value, files, trialDesignFileNames);
  return written.ok
    ? ok([...sentences(designed.value.design, room.value), `Written to ${out.value}.`].join('\n'))
    : written;
}

function sentences(design: TrialDesign, room: RoomScatter | null): string[] {
  const { wish, patches, patchMm, power, layouts } = design;
  const told = [
    `${patches.length} patches of ${patchMm.toFixed(0)} mm on ${wish.stones === 1 ? 'one stone' : `${wish.stones} stones`}.`,
    ...(room === null ? [] : [roomSentence(room)]),
    ...power.map((each) => powerSentence(each, wish)),
    ...designCautions(design),
    'list.csv stays sealed until all patches are read; its seal stands in design.json.',
  ];
  if (layouts?.length === 0)
    told.push(`No trial of up to 8 stones would notice a difference of ${wish.wanted}.`);
  for (const [index, cheapest] of (layouts ?? []).entries())
    told.push(`${index === 0 ? 'Cheapest' : 'Else'} that notices ${wish.wanted}: ${layoutWords(cheapest)}.`);
  return told;
}

function roomSentence({ stones, scatter, remembered }: RoomScatter): string {
  if (scatter === null)
    return `Too little was read in this room (test stones: ${stones}) to say how its patches scatter.`;
  const part = (of: 'stone' | 'strip' | 'patch', name: string) =>
    `${name} ${scatter[of].toFixed(3)}${of !== 'patch' && remembered.includes(of) ? ' (unknown here: from memory)' : ''}`;
  return `This room's own scatter, by ${stones} test stone${stones === 1 ? '' : 's'}: ${part('stone', 'stones')}, ${part('strip', 'strips')}, ${part('patch', 'patches')}.`;
}

function layoutWords(cheapest: CheapestTrial): string {
  const { layout, blocks, stones, stripRepeats, patchRepeats, patches, minutes, chances } = cheapest;
  const kind = blocks === null ? layout : `${layout} (blocks ${blocks})`;
  const noticed = chances.map(({ of, chance }) => `${of} ${Math.round(100 * chance)} %`).join(', ');
  return `${kind}, stones ${stones}, stripRepeats ${stripRepeats}, patchRepeats ${patchRepeats}: ${patches} patches, about ${minutes} minutes of hands (from memory); noticed at scatter ${noticed}`;
}

function powerSentence({ of, whole, sub, perStone }: TrialPower, wish: TrialDesign['wish']): string {
  const scatter = of === 'this room' ? "At this room's scatter" : `At ${of} scatter`;
  const parts = [
    ...(wish.perStone ? [`${wish.perStone.name} ${sizeWords(perStone ?? null)}`] : []),
    ...(wish.whole ? [`${wish.whole.name} ${sizeWords(whole)}`] : []),
    `${wish.sub.name} ${sizeWords(sub)}`,
  ];
  return `${scatter}, noticed 8 times in 10: ${parts.join('; ')}.`;
}

function sizeWords(smallest: number | null): string {
  return smallest === null ? 'nothing (no replicate)' : `a difference of ${smallest.toFixed(3)} or more`;
}
