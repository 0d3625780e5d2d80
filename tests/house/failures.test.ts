import { expect, test } from 'vitest';
import { exitStatus } from '../../src/cli/exitStatus.ts';
import { failure } from '../../src/foundation/failure.ts';
import { type FailureCode, failureRegistry } from '../../src/foundation/failureRegistry.ts';
import { httpStatus } from '../../src/server/httpStatus.ts';
import { sourcesBelow, textOf } from './trackedFiles.ts';

const codes = Object.keys(failureRegistry) as FailureCode[];

/** Where the codes are listed, not used. */
const lists = ['src/server/httpStatus.ts', 'src/cli/exitStatus.ts'];
const entries = sourcesBelow('src/foundation/failures/');
const used = sourcesBelow('src/')
  .filter((path) => !lists.includes(path) && !entries.includes(path) && !path.endsWith('.test.ts'))
  .map(textOf)
  .join('\n');
/** Codes put together from a fixed part and a word, such as `zone-${fault}`. */
const patterns = [...used.matchAll(/failure\(\s*`([^`]+)`/g)].map(
  ([, text]) => new RegExp(`^${text!.replace(/\$\{[^}]+\}/g, '([a-z-]+)')}$`),
);

function isUsed(code: string): boolean {
  if (used.includes(`'${code}'`)) return true;
  return patterns.some((pattern) => {
    const word = pattern.exec(code)?.[1];
    return word !== undefined && used.includes(`'${word}'`);
  });
}

test.each(codes)('%s has an HTTP status, an exit status, a sentence and what to do', (code) => {
  expect(httpStatus[code]).toBeGreaterThanOrEqual(400);
  expect(httpStatus[code]).toBeLessThan(600);
  expect([1, 2, 3]).toContain(exitStatus(failure(code)));
  const { sentence, remedy } = failureRegistry[code];
  expect(sentence).toMatch(/^\S.*\.$/s);
  expect(remedy).toMatch(/^\S.*\.$/s);
});

test('no code stands in two files, where the later one would hide the earlier', () => {
  const written = entries.flatMap((path) =>
    [...textOf(path).matchAll(/^ {2}'?([a-z-]+)'?: \{/gm)].map(([, code]) => code),
  );
  expect(written.toSorted()).toEqual(codes.toSorted());
});

test('the lists name no other codes', () => {
  expect(Object.keys(httpStatus).toSorted()).toEqual(codes.toSorted());
});

test('every failure of the registry can happen', () => {
  expect(codes.filter((code) => !isUsed(code))).toEqual([]);
});
