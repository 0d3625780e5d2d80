import { expect } from 'vitest';

/** Whether markup is well-formed XML as far as nesting goes: every element that opens is closed in its order. */
export function expectWellFormed(markup: string): void {
  const open: string[] = [];
  const tag =
    /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<style[\s\S]*?<\/style>|<(\/?)([\w:.-]+)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/g;
  const rest = markup.replace(tag, (_whole, closes: string, name: string, _attributes, alone: string) => {
    if (name === undefined || alone === '/' || name === 'img') return '';
    if (closes === '/') expect(open.pop(), `</${name}>`).toBe(name);
    else open.push(name);
    return '';
  });
  expect(open, 'elements left open').toEqual([]);
  expect(rest, 'what is left is text').not.toMatch(/[<]|&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);)/i);
}
