/** So many bytes as people say it: kB, MB or GB of a thousand each. */
export function byteWords(bytes: number): string {
  if (bytes < 1e6) return `${Math.max(1, Math.round(bytes / 1e3))} kB`;
  if (bytes < 1e9) return `${rounded(bytes / 1e6)} MB`;
  return `${rounded(bytes / 1e9)} GB`;
}

function rounded(value: number): string {
  return value < 10 ? (Math.round(value * 10) / 10).toString() : Math.round(value).toString();
}
