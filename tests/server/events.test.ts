import { expect, it } from 'vitest';
import { type ServerUnderTest, serverUnderTest } from './serverUnderTest.ts';

interface Told {
  readonly id: string;
  readonly state: string;
  readonly progress: { readonly stage: string } | null;
}

/** Listens from now on; `end` settles when the stream has ended. */
async function listen(server: ServerUnderTest): Promise<{ told: Told[]; end: Promise<void> }> {
  const response = await server.call('/api/events');
  const told: Told[] = [];
  const read = async () => {
    let text = '';
    for await (const chunk of response.body!.pipeThrough(new TextDecoderStream())) {
      text += chunk;
      for (let cut = text.indexOf('\n\n'); cut >= 0; cut = text.indexOf('\n\n')) {
        const event = /^event: comparison\ndata: (.*)$/m.exec(text.slice(0, cut));
        if (event) told.push(JSON.parse(event[1]!) as Told);
        text = text.slice(cut + 2);
      }
    }
  };
  return { told, end: read() };
}

it('tells two pages the same, in order, and ends when the server stops', async () => {
  const server = await serverUnderTest();
  const pages = [await listen(server), await listen(server)];
  const { id } = await server.comparison('stone.png');
  await server.until(id, 'measured');
  await server.stop();
  for (const { end } of pages) await end;
  const [one, two] = pages.map((page) => page.told);
  expect(one).toEqual(two);
  expect(one!.every((event) => event.id === id)).toBe(true);
  expect(one!.map((event) => event.progress?.stage ?? event.state)).toEqual([
    'waiting',
    'measuring',
    'reading',
    'sheets',
    'measured',
  ]);
});

it('goes on telling one page after the other has left', async () => {
  const server = await serverUnderTest();
  const leaving = new AbortController();
  await server.call('/api/events', { signal: leaving.signal });
  const staying = await listen(server);
  leaving.abort();
  const { id } = await server.comparison('stone.png');
  await server.until(id, 'measured');
  await server.stop();
  await staying.end;
  expect(staying.told.at(-1)).toMatchObject({ id, state: 'measured', progress: null });
});
