import type { BlindSitting, TestStoneReading } from '../../records/patchReading.ts';
import type { TestStone, TestStoneDraft } from '../../records/testStone.ts';
import type { TestStoneAnswer } from '../../records/testStoneAnswer.ts';
import type { TestStoneEventInput } from '../../records/testStoneEvent.ts';
import { say } from '../words/say.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const testStonesKey = [say('test stones')] as const;
export const anyTestStoneKey = [say('test stone')] as const;
export const testStoneKey = (id: string) => [say('test stone'), id] as const;
export const testStoneReadingKey = (id: string) => [say('test stone'), id, 'reading'] as const;
export const testStoneSittingsKey = (id: string) => [say('test stone'), id, 'sittings'] as const;
export const testStoneAnswerKey = (id: string) => [say('test stone'), id, 'answer'] as const;

export interface TestStonePage {
  readonly testStones: readonly TestStone[];
  readonly next: string | null;
}

/** One page of test stones, newest first. */
export function listTestStones(
  query: ListQuery,
  after: string | null,
  signal?: AbortSignal,
): Promise<TestStonePage> {
  return ask(pageAddress('/api/test-stones', query, after, {}), signal ? { signal } : {});
}

/** One test stone. */
export function openTestStone(id: string): Promise<TestStone> {
  return ask(`/api/test-stones/${id}`);
}

/** Enters a test stone. */
export function addTestStone(draft: Partial<TestStoneDraft>): Promise<TestStone> {
  return ask('/api/test-stones', withJson('POST', draft));
}

/** Saves what changed of a test stone. */
export function saveTestStone(
  id: string,
  version: number,
  changes: Partial<TestStoneDraft>,
): Promise<TestStone> {
  return ask(`/api/test-stones/${id}`, withJson('PATCH', { ...changes, version }));
}

/** Has every print read that is not read as it stands now. */
export function measureTestStone(id: string): Promise<TestStone> {
  return ask(`/api/test-stones/${id}/readings`, { method: 'POST' });
}

/** Stops reading its prints: the one that is being read, and those that wait. */
export function stopReading(id: string): Promise<unknown> {
  return ask(`/api/test-stones/${id}/readings`, { method: 'DELETE' });
}

/** What was read of a test stone. */
export function readTestStone(id: string): Promise<TestStoneReading> {
  return ask(`/api/test-stones/${id}/reading`);
}

/** Blind readings of a test stone. */
export async function readSittings(id: string): Promise<readonly BlindSitting[]> {
  return (await ask<{ sittings: readonly BlindSitting[] }>(`/api/test-stones/${id}/sittings`)).sittings;
}

/** What a test stone answers. */
export function readTestStoneAnswer(id: string, work: string, signal: AbortSignal): Promise<TestStoneAnswer> {
  return ask(`/api/test-stones/${id}/answer?progress=${work}`, { signal });
}

/** Keeps a correction, or part of a blind reading. */
export function logTestStone(id: string, event: TestStoneEventInput): Promise<unknown> {
  return ask(`/api/test-stones/${id}/events`, withJson('POST', event));
}

export const findingsTableAddress = (id: string) => `/api/test-stones/${id}/reading.csv`;

export const answerSheetAddress = (id: string) => inPageWords(`/api/test-stones/${id}/answer.pdf`);
