import { readFile } from 'node:fs/promises';
import { workerData } from 'node:worker_threads';
import { ok } from '../../foundation/result.ts';
import { decodePhotograph } from '../../imaging/codecs/decodePhotograph.ts';
import { writePyramid } from '../../imaging/codecs/writePyramid.ts';
import { suggestCorners } from '../../imaging/matching/suggestCorners.ts';
import { answer } from '../threads/answer.ts';
import { readTones } from '../zoneTones/readTones.ts';
import { ingestPhotograph } from './ingestPhotograph.ts';
import type { PictureAnswers, PictureTask } from './pictureTask.ts';

async function perform(task: PictureTask): Promise<PictureAnswers[PictureTask['kind']]> {
  switch (task.kind) {
    case 'ingest':
      return ingestPhotograph(task.folder, task.fileName);
    case 'pyramid': {
      const photograph = await decodePhotograph(await readFile(task.file), task.fileName);
      if (!photograph.ok) return photograph;
      await writePyramid(photograph.value, task.folder);
      return ok(null);
    }
    case 'corners': {
      const photograph = await decodePhotograph(await readFile(task.file), task.fileName);
      if (!photograph.ok) return photograph;
      return ok(suggestCorners(photograph.value) ?? { corners: null, letter: false, sure: 0, kind: 'none' });
    }
    case 'tones':
      return readTones(task);
    default:
      return task satisfies never;
  }
}

answer(await perform(workerData as PictureTask));
