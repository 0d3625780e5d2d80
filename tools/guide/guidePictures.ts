import type { Page } from 'playwright-core';

export const desk = { width: 1366, height: 900 } as const;
export const phone = { width: 390, height: 844 } as const;

/** One picture of the guide: the screen it shows, and what is done there before it is taken. */
export interface GuidePicture {
  /** Its file in docs/guide, without the ending. */
  readonly name: string;
  readonly path: string;
  readonly size: 'desk' | 'phone';
  readonly prepare?: (page: Page, address: string) => Promise<void>;
}

/** The bench of a work, once it is there. */
async function benchOf(page: Page): Promise<void> {
  await page
    .getByRole('button', { name: 'Go to the bench' })
    .or(page.getByRole('link', { name: 'Go to the bench' }))
    .click();
  await page.locator('.bench-target.first').waitFor();
}

/** The pictures in the order of the line, from choosing a stone to the report. */
export const guidePictures: readonly GuidePicture[] = [
  { name: 'rack', path: '/', size: 'desk' },
  { name: 'rack-phone', path: '/', size: 'phone' },
  { name: 'stone', path: '/stones/saltreach-s-02', size: 'desk' },
  { name: 'lifting', path: '/room/lift', size: 'desk', prepare: liftOfStone },
  { name: 'zones', path: '/works/saltreach-high-water', size: 'desk' },
  { name: 'first-etch', path: '/works/saltreach-high-water/etch', size: 'desk', prepare: planMade },
  { name: 'mixing', path: '/mixing', size: 'desk' },
  { name: 'bench-line', path: '/works/saltreach-neap', size: 'phone', prepare: benchOf },
  { name: 'bench-etch', path: '/', size: 'phone', prepare: etchUnderWay },
  { name: 'days', path: '/works/saltreach-spring-tide/days', size: 'desk' },
  { name: 'leaving', path: '/leaving', size: 'phone' },
  { name: 'camera', path: '/stones/saltreach-s-02', size: 'phone', prepare: cameraOpen },
  { name: 'comparison', path: '/comparisons/saltreach-mooring-measured', size: 'desk' },
  { name: 'proofs', path: '/works/saltreach-low-water/proofs', size: 'desk' },
  { name: 'suspects', path: '/works/saltreach-low-water/proofs/suspects', size: 'desk' },
  { name: 'press', path: '/editions/saltreach-twelve-tides/press', size: 'phone' },
  { name: 'edition', path: '/editions/saltreach-twelve-tides', size: 'desk' },
  { name: 'report', path: '/reports/saltreach-report', size: 'desk' },
  { name: 'test-plan', path: '/test-stones/plan', size: 'desk' },
  { name: 'test-answer', path: '/test-stones/saltreach-test-stone-2/answer', size: 'desk' },
  { name: 'known', path: '/known', size: 'desk' },
  { name: 'keeping', path: '/keeping', size: 'desk' },
];

/** A stone's first etch planned as its form proposes. */
async function planMade(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Make the plan' }).click();
  await page.getByText('To have ready').waitFor();
}

/** The lifting question with a stone of thirty kilograms in it. */
async function liftOfStone(page: Page): Promise<void> {
  for (const [label, value] of [
    ['Stone, wide', '400'],
    ['High', '300'],
    ['Thick', '80'],
  ] as const)
    await page.getByLabel(label).fill(value);
  await page.getByText(/kg/).first().waitFor();
}

/** The camera of the page over a stone, the phone lying level. */
async function cameraOpen(page: Page): Promise<void> {
  const told = await page.context().newCDPSession(page);
  await told.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 0, beta: 0, gamma: 0 });
  await page.reload();
  await page.getByRole('button', { name: 'Photograph it with the guide' }).click();
  await page.waitForTimeout(4000);
}

/** The first etch that was planned for the picture before, its ground laid, the next place lit. */
async function etchUnderWay(page: Page, address: string): Promise<void> {
  const send = async (path: string, body: object): Promise<{ readonly id: string }> => {
    const response = await fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    if (!response.ok) throw new Error(await response.text());
    return (await response.json()) as { readonly id: string };
  };
  const { id } = await send('/api/runs', { workId: 'saltreach-high-water' });
  const at = new Date().toISOString();
  for (const kind of ['stage-started', 'stage-ended'])
    await send(`/api/runs/${id}/events`, {
      clientId: `guide-${kind}`,
      kind,
      at,
      payload: { stage: 'powder' },
    });
  await page.goto(`${address}/bench/${id}`);
  const target = page.locator('.bench-target.first');
  await target.click();
  await page.waitForTimeout(6000);
  await target.click();
  await page.waitForTimeout(4000);
}
