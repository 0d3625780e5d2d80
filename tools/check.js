/**
 * Runs every check one after the other, whatever the earlier ones said, and ends with one line `N passed, N failed`.
 * A step counts as one; tests count one each.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const results = join(tmpdir(), `stonetone-tests-${process.pid}.json`);
const steps = [
  ['types', ['tsc', '--noEmit', '-p', '.']],
  ['lint', ['biome', 'check', '--diagnostic-level=error', '--max-diagnostics=40']],
  ['unused code', ['knip']],
  ['import rules', ['depcruise', 'src', 'bench', 'tests', 'tools', '--config', '.dependency-cruiser.cjs']],
  ['build for node', ['tsc', '-p', 'tsconfig.build.json']],
  ['serving in one file', ['vite', 'build', '-c', 'vite.serve.config.ts', '--logLevel', 'warn']],
  ['build for the browser', ['vite', 'build', '--logLevel', 'warn']],
];

let passed = 0;
let failed = 0;
let skipped = 0;

for (const [name, command] of steps) {
  const run = spawnSync('npx', ['--no-install', ...command], { encoding: 'utf8' });
  const good = run.status === 0;
  if (good) passed++;
  else failed++;
  console.log(`${good ? 'passed' : 'FAILED'}  ${name}`);
  if (!good) console.log(`${run.stdout}\n${run.stderr}`);
}

const tests = spawnSync(
  'npx',
  ['--no-install', 'vitest', 'run', '--reporter=dot', '--reporter=json', `--outputFile.json=${results}`],
  {
    stdio: ['ignore', 'inherit', 'inherit'],
  },
);
if (existsSync(results)) {
  const counts = JSON.parse(readFileSync(results, 'utf8'));
  passed += counts.numPassedTests;
  failed += counts.numFailedTests;
  skipped += counts.numPendingTests;
  // A file that could not even be loaded holds no test that failed: it counts as one.
  const broken = counts.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  for (const file of broken) console.log(`FAILED  ${file.name}: ${file.message}`);
  failed += broken.length;
  // What passed only when tried again is no failure, but nobody should have to guess that it happened.
  for (const file of counts.testResults) {
    for (const { status, failureMessages, fullName } of file.assertionResults) {
      if (status === 'passed' && failureMessages.length > 0) {
        console.log(`passed when tried again  ${fullName}: ${failureMessages[0]}`);
      }
    }
  }
  rmSync(results);
} else {
  failed++;
}
if (tests.status !== 0 && failed === 0) failed++;

console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed > 0 ? 1 : 0;
