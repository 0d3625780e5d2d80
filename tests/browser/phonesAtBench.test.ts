import { expect, it } from 'vitest';
import type { RunEvent, RunSummary } from '../../src/records/run.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { ownAddresses } from '../../src/server/network/ownAddresses.ts';
import { postJson } from '../server/serverUnderTest.ts';
import { openServer } from './openServer.ts';
import { describeInBrowser, phone } from './pages.ts';

describeInBrowser('a phone at the bench', (pages) => {
  it.skipIf(ownAddresses().length === 0)(
    'that is shut out while it logs keeps what it holds, and sends it once when it is let in again',
    async () => {
      const { server, network } = await openServer({ studio: sampleStudio() });
      const here = async (path: string, init?: RequestInit) => {
        const answer = await fetch(server.address + path, init);
        return (await answer.json()) as never;
      };
      const code = async () => ((await here('/api/letting-in', { method: 'POST' })) as { code: string }).code;
      const run: RunSummary = await here('/api/runs', postJson({ workId: 'saltreach-neap' }));
      const logged = async () =>
        ((await here(`/api/runs/${run.id}/events`)) as { events: readonly RunEvent[] }).events;

      const hand = await pages.onPhone('/phones');
      await hand.goto(`${network}/join#${await code()}`);
      await hand.getByRole('button', { name: 'Go to the stones' }).click();
      await hand.getByRole('navigation', { name: 'The pages of Stonetone' }).waitFor();
      await hand.goto(`${network}/bench/${run.id}`);
      const trouble = hand.getByRole('button', { name: 'Trouble', exact: true });
      await trouble.click();
      await expect.poll(async () => (await logged()).length).toBe(1);
      expect((await logged())[0]).toMatchObject({ kind: 'trouble', device: 'Phone 1' });
      if (process.env.PICTURES) await hand.screenshot({ path: `${process.env.PICTURES}/phone-bench.png` });

      await hand.context().setOffline(true);
      await hand.waitForTimeout(800);
      await trouble.click();
      await hand.getByText('1 not sent yet').waitFor();
      const { devices }: { devices: readonly { id: string }[] } = await here('/api/devices');
      await here(`/api/devices/${devices[0]!.id}/shut-out`, { method: 'POST' });
      await hand.context().setOffline(false);
      await hand.getByRole('heading', { name: 'Type the code' }).waitFor();
      await hand.getByText('What is not sent yet waits here').waitFor();
      expect(await logged()).toHaveLength(1);

      await hand.getByLabel('The six digits').fill(await code());
      await hand.getByRole('button', { name: 'Let this phone in' }).click();
      await hand.getByRole('button', { name: 'Go to the stones' }).click();
      await hand.getByText('All is sent and kept.').waitFor({ state: 'attached' });
      await hand.setViewportSize(phone);
      const events = await logged();
      expect(events.map(({ kind, device }) => `${kind} by ${device}`)).toEqual([
        'trouble by Phone 1',
        'trouble by Phone 2',
      ]);
      expect(new Set(events.map(({ clientId }) => clientId)).size).toBe(2);
    },
  );
});
