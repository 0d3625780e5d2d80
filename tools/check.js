/**
 * Runs every check, whatever the earlier ones said, and ends with one line `N passed, N failed`.
 * A step counts as one; tests count one each.
 */
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';

const results = join(tmpdir(), `stonetone-tests-${process.pid}.json`);
const steps = [
  ['types', ['tsc', '--noEmit', '-p', '.']],
  // what `npm ci` has just built of these very sources is not built again
  ['build', ['node', 'tools/prepare.js']],
  ['lint', ['biome', 'check', '--error-on-warnings', '--max-diagnostics=40']],
  ['unused code', ['knip']],
  ['import rules', ['depcruise', 'src', 'bench', 'tests', 'tools', '--config', '.dependency-cruiser.cjs']],
];

let passed = 0;
let failed = 0;
let skipped = 0;

function count(good, name, told) {
  if (good) passed++;
  else failed++;
  console.log(`${good ? 'passed' : 'FAILED'}  ${name}`);
  if (!good) console.log(told);
}

/** Ends with the step's exit status, null where it was killed or could not be started, and all that it told. */
function runStep([command, ...words]) {
  return new Promise((done) => {
    const [program, given] =
      command === 'node' ? [process.execPath, words] : ['npx', ['--no-install', command, ...words]];
    const child = spawn(program, given, { stdio: ['ignore', 'pipe', 'pipe'] });
    let told = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (text) => {
        told += text;
      });
    }
    child.on('error', (error) => done({ status: null, told: String(error) }));
    child.on('close', (status, signal) =>
      done({ status, told: signal ? `${told}\nended by ${signal}` : told }),
    );
  });
}

/** Each step keeps about one core busy: as many run at once as there are cores. */
async function runSteps() {
  const waiting = [...steps];
  const oneAfterAnother = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const [name, command] = next;
      const { status, told } = await runStep(command);
      count(status === 0, name, told);
    }
  };
  await Promise.all(Array.from({ length: Math.min(3, availableParallelism()) }, oneAfterAnother));
}

// Without these, checks would be skipped here that are made elsewhere.
if (process.env.CI === 'true') {
  for (const [tool, from] of [
    ['chromium', 'chromium'],
    ['pdftoppm', 'poppler-utils'],
    ['pdftotext', 'poppler-utils'],
  ]) {
    const there = spawnSync(tool, [tool === 'chromium' ? '--version' : '-v']);
    if (there.status !== 0)
      count(false, `${tool} is there`, `It comes with Debian's ${from}: ${there.error ?? there.stderr}`);
  }
}
await runSteps();

const tests = spawnSync(
  'npx',
  ['--no-install', 'vitest', 'run', '--reporter=dot', '--reporter=json', `--outputFile.json=${results}`],
  {
    stdio: ['ignore', 'inherit', 'inherit'],
  },
);
const counts = countsOf(results);
if (counts === null) {
  count(false, 'tests', `They ended with ${tests.status ?? tests.signal} and told no results.`);
} else {
  passed += counts.numPassedTests;
  skipped += counts.numPendingTests;
  // A file that could not even be loaded holds no test that failed: it counts as one.
  const broken = counts.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  for (const file of broken) console.log(`FAILED  ${file.name}: ${file.message}`);
  const ofTests = counts.numFailedTests + broken.length;
  failed += ofTests;
  // What passed only when tried again is no failure, but nobody should have to guess that it happened.
  for (const file of counts.testResults) {
    for (const { status, failureMessages, fullName } of file.assertionResults) {
      if (status === 'passed' && failureMessages.length > 0) {
        console.log(`passed when tried again  ${fullName}: ${failureMessages[0]}`);
      }
    }
  }
  if (tests.status !== 0 && ofTests === 0)
    count(false, 'tests', `None failed, but they ended with ${tests.status ?? tests.signal}: see above.`);
}
rmSync(results, { force: true });

console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed > 0 ? 1 : 0;

/** What the tests wrote at their end; null where they came to none. */
function countsOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null;
  }
}
