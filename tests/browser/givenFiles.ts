import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Locator, Page } from 'playwright-core';

interface GivenFile {
  readonly name: string;
  readonly base64: string;
}

function given(path: string): GivenFile {
  return { name: basename(path), base64: readFileSync(path).toString('base64') };
}

/** Lets files go over an element, as if carried there from a folder. */
export async function dropOn(target: Locator, ...paths: readonly string[]): Promise<void> {
  await target.evaluate((element, files) => {
    const carried = new DataTransfer();
    for (const { name, base64 } of files)
      carried.items.add(
        new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], name, {
          type: 'image/jpeg',
        }),
      );
    for (const kind of ['dragover', 'drop'])
      element.dispatchEvent(new DragEvent(kind, { dataTransfer: carried, bubbles: true, cancelable: true }));
  }, paths.map(given));
}

/** Pastes a file into the page. */
export async function pasteFile(page: Page, path: string): Promise<void> {
  await page.evaluate(({ name, base64 }) => {
    const carried = new DataTransfer();
    carried.items.add(
      new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], name, {
        type: 'image/jpeg',
      }),
    );
    document.dispatchEvent(new ClipboardEvent('paste', { clipboardData: carried, bubbles: true }));
  }, given(path));
}
