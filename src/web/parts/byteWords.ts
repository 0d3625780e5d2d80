import { say } from '../words/say.ts';
/** So many bytes as people say it: kB, MB or GB of a thousand each. */
export function byteWords(bytes: number): string {
  if (bytes < 1e6) return say('{it} kB', { it: Math.max(1, Math.round(bytes / 1e3)) });
  if (bytes < 1e9) return say('{rounded} MB', { rounded: rounded(bytes / 1e6) });
  return say('{rounded} GB', { rounded: rounded(bytes / 1e9) });
}

function rounded(value: number): string {
  return value < 10 ? (Math.round(value * 10) / 10).toString() : Math.round(value).toString();
}
