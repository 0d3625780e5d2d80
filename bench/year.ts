/**
 * A year of the invented studio, and that year a hundred times over in one folder: how long lists, the rack, the week, a
 * work's opening, the year's report, an export and a backup take. `npm run bench:year`; `-- --times 10` for fewer.
 */
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { makeBackup } from '../src/application/backup/makeBackup.ts';
import { openServices } from '../src/application/openServices.ts';
import { saltreachClock, writeYear } from '../src/sample/saltreach/year/writeYear.ts';
import { quantile } from '../src/science/statistics/quantile.ts';
import { startServer } from '../src/server/startServer.ts';
import { tellAgain } from './served/yearAgain.ts';

const { values } = parseArgs({ options: { times: { type: 'string', default: '100' } } });
const times = Number(values.times);
const askings = 15;
const folder = await mkdtemp(join(tmpdir(), 'stonetone-year-'));
const dataFolder = join(folder, 'data');

async function measured(name: string): Promise<void> {
  const started = await startServer({ dataFolder, port: 0 });
  if (!started.ok) throw new Error(started.error.message);
  const { address, stop } = started.value;
  console.log(name);
  const work = 'saltreach-low-water';
  const paths: Readonly<Record<string, string>> = {
    'works, a page': '/api/works',
    'works, found by a word': '/api/works?search=saltings',
    'the rack': '/api/rack',
    'the waits': '/api/rack/waits',
    'the week': '/api/week?from=2026-11-16',
    'a work': `/api/works/${work}`,
    'its pulls': `/api/works/${work}/pulls`,
    'its series': `/api/works/${work}/series`,
    'an edition’s ledger': '/api/editions/saltreach-twelve-tides/ledger',
    'the year’s report': '/api/reports/saltreach-report/report.json',
    'the same as PDF': '/api/reports/saltreach-report/report.pdf',
    'the same as DOCX': '/api/reports/saltreach-report/report.docx',
  };
  for (const [what, path] of Object.entries(paths)) {
    const took: number[] = [];
    for (let asked = 0; asked < askings; asked++) {
      const begun = performance.now();
      const answer = await fetch(address + path);
      await answer.arrayBuffer();
      if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
      took.push(performance.now() - begun);
    }
    const [first, ...again] = took;
    const text = [first!, quantile(again, 0.5), quantile(again, 1)].map((ms) => ms.toFixed(0).padStart(7));
    console.log(
      `  ${what.padEnd(24)} first ${text[0]}, then ${text[1]} at the middle, ${text[2]} at most, ms`,
    );
  }
  const begun = performance.now();
  const archive = await (await fetch(`${address}/api/export.zip`)).arrayBuffer();
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(`  the export: ${seconds} s, ${(archive.byteLength / 1e6).toFixed(1)} MB packed`);
  await stop();
  const to = join(folder, `${name}.tar`);
  const saving = performance.now();
  const made = await makeBackup({ dataFolder, to, now: () => new Date() });
  if (!made.ok) throw new Error(made.error.message);
  const saved = ((performance.now() - saving) / 1000).toFixed(1);
  console.log(`  the backup: ${saved} s, ${((await stat(to)).size / 1e6).toFixed(1)} MB`);
}

try {
  const begun = performance.now();
  const clock = saltreachClock();
  const opened = await openServices({ dataFolder, largestBytes: 50e6, now: clock.now });
  if (!opened.ok) throw new Error(opened.error.message);
  await writeYear(opened.value, clock);
  await opened.value.close();
  console.log(`a year is written in ${((performance.now() - begun) / 1000).toFixed(1)} s`);
  await measured('one year');
  const rows = tellAgain(join(dataFolder, 'stonetone.sqlite'), times);
  await measured(`${times} years, ${rows} rows more`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
