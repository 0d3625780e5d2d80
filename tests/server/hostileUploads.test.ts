import { zipSync } from 'fflate';
import { expect, it } from 'vitest';
import { serverUnderTest } from './serverUnderTest.ts';

it('what is no photograph is refused by what it holds, whatever it is called', async () => {
  const server = await serverUnderTest();
  const text = (words: string) => new TextEncoder().encode(words);
  const sent: Record<string, Uint8Array> = {
    drawing: text(
      '<svg xmlns="http://www.w3.org/2000/svg" width="64" height="48"><script>alert(1)</script></svg>',
    ),
    'drawing with a prologue': text(
      '<?xml version="1.0"?><!DOCTYPE svg><svg xmlns="http://www.w3.org/2000/svg"/>',
    ),
    page: text('<!doctype html><html><script>alert(1)</script></html>'),
    document: text('%PDF-1.7\n%âãÏÓ\n1 0 obj\n<<>>\nendobj\n'),
    archive: zipSync({ 'stone.jpg': text('no stone') }),
    program: Uint8Array.from([0x7f, 0x45, 0x4c, 0x46, 2, 1, 1, 0, ...Array(200).fill(0)]),
  };
  const names = ['stone.jpg', 'stone.svg', '../../stone.png'];
  for (const [index, [what, bytes]] of Object.entries(sent).entries()) {
    const answer = await server.upload(names[index % names.length]!, bytes);
    expect([answer.status, (await answer.json()).code], what).toEqual([415, 'picture-unknown-kind']);
  }
});
