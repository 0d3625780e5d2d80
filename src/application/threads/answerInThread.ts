import { runInThread } from './runInThread.ts';

/** What a thread of its own answers to its input. Throws where the thread broke. */
export async function answerInThread<Answer>(module: URL, input: unknown): Promise<Answer> {
  const { end, terminate } = runInThread<never, Answer>(module, input);
  const ended = await end;
  void terminate();
  if (ended.kind === 'answered') return ended.answer;
  throw new Error(ended.kind === 'crashed' ? ended.why : 'the thread was ended');
}
