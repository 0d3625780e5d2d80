import { expect, it } from 'vitest';
import { chromiumPath, howToGetChromium } from './chromium.ts';

it.skipIf(chromiumPath === null && process.env.CI !== 'true')(
  'the browser that the checks need is there',
  () => {
    expect(chromiumPath, howToGetChromium).not.toBeNull();
  },
);
