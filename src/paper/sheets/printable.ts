/** Control characters besides tab and line feed. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const unprintable = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g;

/**
 * A sheet's content without control characters: none has a shape in a font, and NUL breaks the reader of one of ours, so that a
 * name pasted from elsewhere would cost the whole sheet.
 */
export function printable<Content>(content: Content): Content {
  if (typeof content === 'string') return content.replace(unprintable, '') as Content;
  if (Array.isArray(content)) return content.map(printable) as Content;
  if (content === null || typeof content !== 'object' || Object.getPrototypeOf(content) !== Object.prototype)
    return content;
  return Object.fromEntries(Object.entries(content).map(([key, part]) => [key, printable(part)])) as Content;
}
