import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { workerData } from 'node:worker_threads';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { placeFailure } from '../../store/backup/placeFailure.ts';
import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { openTables } from '../../store/readTables.ts';
import { answer } from '../threads/answer.ts';
import type { ExportTask } from './exportDesk.ts';
import { zipPlace } from './exportPlaces.ts';
import { type ExportCounts, writeExport } from './writeExport.ts';

function written({ root, file }: ExportTask): Result<ExportCounts> {
  const reader = openTables(dataFolderAt(root));
  try {
    const place = zipPlace(file);
    const counts = writeExport(reader, place);
    place.done();
    return ok(counts);
  } catch (error) {
    rmSync(file, { force: true });
    return fail(placeFailure(error, dirname(file)));
  } finally {
    reader.close();
  }
}

answer(written(workerData as ExportTask));
