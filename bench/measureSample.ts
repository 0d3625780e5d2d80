/** `npm run sample:measure`: measures the demo pair afresh and keeps what the engine wrote about it. */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { measureComparison } from '../src/application/measureComparison.ts';
import { keptFolder } from '../src/sample/saltreach/keptFolder.ts';
import { sampleMeasureInput } from '../src/sample/saltreach/sampleComparison.ts';

const measured = await measureComparison(
  await sampleMeasureInput(),
  {
    progress: () => undefined,
    stopped: () => false,
  },
  new Date(),
);
if (!measured.ok) throw new Error(measured.error.message);
const folder = join(keptFolder(), 'measured');
await rm(folder, { recursive: true, force: true });
await mkdir(folder, { recursive: true });
for (const [name, bytes] of measured.value.files) {
  await writeFile(join(folder, name), bytes);
  console.log(`${name}  ${(bytes.length / 1e3).toFixed(0)} kB`);
}
