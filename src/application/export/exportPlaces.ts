import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { Zip, ZipDeflate } from '../zipLibrary.ts';
import type { ExportPlace } from './writeExport.ts';

/** Files in a folder that is there; each is on the disk when it ends. */
export function folderPlace(folder: string): ExportPlace {
  let handle = -1;
  return {
    begin: (fileName) => {
      handle = openSync(join(folder, fileName), 'wx');
    },
    write: (text) => void writeSync(handle, text),
    end: () => {
      fsyncSync(handle);
      closeSync(handle);
    },
  };
}

/** One ZIP archive, written as it grows; `done` ends it. Archives are limited to 4 GB by their form. */
export function zipPlace(file: string): ExportPlace & { done(): void } {
  const handle = openSync(file, 'wx');
  const encoder = new TextEncoder();
  let entry: ZipDeflate | null = null;
  const archive = new Zip((error, bytes) => {
    if (error) throw error;
    writeSync(handle, bytes);
  });
  return {
    begin: (fileName) => {
      entry = new ZipDeflate(fileName, { level: 6 });
      archive.add(entry);
    },
    write: (text) => entry!.push(encoder.encode(text)),
    end: () => entry!.push(new Uint8Array(), true),
    done: () => {
      archive.end();
      closeSync(handle);
    },
  };
}
