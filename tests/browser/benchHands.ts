import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { RunEvent } from '../../src/records/run.ts';

/** Moves the clock on to so many seconds after the beginning. */
export async function goTo(page: Page, begun: number, seconds: number): Promise<void> {
  const now = await page.evaluate(() => Date.now());
  const ahead = begun + seconds * 1000 - now;
  if (ahead > 0) await page.clock.fastForward(ahead);
}

/** The run that a bench shows. */
function runOf(page: Page): string {
  return new URL(page.url()).pathname.split('/').at(-1)!;
}

/** What the log of a bench's run holds on the server, once it holds so many. */
export async function loggedEvents(page: Page, atLeast: number): Promise<readonly RunEvent[]> {
  const { origin } = new URL(page.url());
  let events: readonly RunEvent[] = [];
  await expect
    .poll(
      async () => {
        const answer = await fetch(`${origin}/api/runs/${runOf(page)}/events`);
        events = ((await answer.json()) as { events: readonly RunEvent[] }).events;
        return events.length;
      },
      { timeout: 10_000 },
    )
    .toBeGreaterThanOrEqual(atLeast);
  return events;
}

/** Touches the large target once it says what is expected; a knuckle is slower than a bounce. */
export async function touchFirst(page: Page, words: string | RegExp): Promise<void> {
  await page.clock.fastForward(700);
  await page.locator('.bench-target.first', { hasText: words }).click();
}
