import { expect, it } from 'vitest';
import { decodePhotograph } from '../../src/imaging/codecs/decodePhotograph.ts';
import { buildGreyPyramid } from '../../src/imaging/matching/greyPyramid.ts';
import { likelyCorners } from '../../src/imaging/matching/likelyCorners.ts';
import { mapOfCorners } from '../../src/imaging/matching/register.ts';
import { sheetOutline } from '../../src/imaging/matching/sheetOutline.ts';
import { rankStarts, searchStarts, sureStart } from '../../src/imaging/matching/starts.ts';
import type { Photograph } from '../../src/imaging/photograph.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { lowWater } from '../../src/sample/render/layouts/lowWater.ts';
import { type PairCase, plainCase } from '../../src/sample/render/pairCase.ts';
import { renderPair } from '../../src/sample/render/renderPair.ts';
import { reducedDrawing } from '../server/reducedDrawing.ts';

const drawing = reducedDrawing(lowWater(1207), 0.5);
const pair: PairCase = { ...plainCase('sure start', 71, drawing), megapixels: 1.5, cellsPerMm: 4 };

async function lookFor(change: Partial<PairCase>) {
  const asked = { ...pair, ...change };
  const rendered = renderPair(asked);
  const [stone, print] = (await Promise.all(
    (['stone', 'print'] as const).map(async (name) => {
      const photograph = await decodePhotograph(
        await encodePicture(rendered.take(name), asked.files),
        `${name}.jpg`,
      );
      if (!photograph.ok) throw new Error(photograph.error.message);
      return photograph.value;
    }),
  )) as [Photograph, Photograph];
  const { homography } = mapOfCorners(drawing.sizeMm, rendered.cornersPx('stone'))!;
  const search = searchStarts(buildGreyPyramid(stone), homography, buildGreyPyramid(print), drawing.sizeMm);
  const { corners, alike } = likelyCorners(print, sheetOutline(print), drawing.sizeMm);
  return { sure: sureStart(search, corners, alike), ranked: () => rankStarts(search, [corners]) };
}

it('ends where ranking all positions ends, and leaves to it what lies the wrong way round', async () => {
  const { sure, ranked } = await lookFor({});
  expect(sure).not.toBeNull();
  expect(sure!.homography).toEqual(ranked()[0]!.homography);
  const flipped = await lookFor({ mirrored: false });
  expect(flipped.sure).toBeNull();
}, 120_000);
