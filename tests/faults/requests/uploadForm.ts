import { oneOf, wholeBetween } from './choose.ts';
import type { MakingRequests } from './makingRequests.ts';

const fileNames = [
  'stone.png',
  'print.jpg',
  '../../x.png',
  'a"b.png',
  '',
  'ä\u202e.png',
  `${'n'.repeat(400)}.jpg`,
  'C:\\x.tif',
];

/** A photograph as a multipart form; spoiled in the picture, or in the form around it. */
export function uploadForm(
  { random, pictures, spoil }: Pick<MakingRequests, 'random' | 'pictures' | 'spoil'>,
  spoiled: boolean,
): { readonly payload: Buffer; readonly contentType: string } {
  const boundary = `edge${wholeBetween(random, 0, 1e9)}`;
  const picture = oneOf(random, pictures);
  const fault = spoiled
    ? oneOf(random, ['picture', 'picture', 'cut', 'field', 'twice', 'fields', 'edge', 'head', 'none'])
    : '';
  const bytes = fault === 'picture' ? spoil(picture, random) : picture;
  const field = fault === 'field' ? oneOf(random, ['', 'file', '__proto__', 'photograph[]']) : 'photograph';
  const name = oneOf(random, fileNames).replaceAll('"', fault === 'head' ? '"' : '%22');
  const part = Buffer.concat([
    Buffer.from(`--${boundary}\r\ncontent-disposition: form-data; name="${field}"; filename="${name}"\r\n`),
    Buffer.from(
      fault === 'head' ? `content-type\r\n${'x: y\r\n'.repeat(3000)}\r\n` : 'content-type: image/png\r\n\r\n',
    ),
    bytes,
    Buffer.from('\r\n'),
  ]);
  const extra = Buffer.from(`--${boundary}\r\ncontent-disposition: form-data; name="a"\r\n\r\nb\r\n`);
  const parts = fault === 'none' ? [] : fault === 'twice' ? [part, part] : [part];
  if (fault === 'fields') parts.unshift(...Array.from({ length: 12 }, () => extra));
  const whole = Buffer.concat([...parts, Buffer.from(`--${boundary}--\r\n`)]);
  const payload = fault === 'cut' ? whole.subarray(0, wholeBetween(random, 0, whole.length - 1)) : whole;
  const told = fault === 'edge' ? oneOf(random, ['other', '', 'x'.repeat(200)]) : boundary;
  return { payload, contentType: `multipart/form-data; boundary=${told}` };
}
