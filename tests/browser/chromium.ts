import { existsSync } from 'node:fs';

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** Where Debian's browser lies; null where there is none. */
export const chromiumPath: string | null = places.find((place) => existsSync(place)) ?? null;

/** What to tell a person whose machine has no browser. */
export const howToGetChromium =
  'Browser checks skipped: there is no chromium in /usr/bin. On Debian: apt-get install chromium';
