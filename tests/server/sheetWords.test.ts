import { expect, it } from 'vitest';
import { pdfText } from '../gallery/popplerTools.ts';
import { serverUnderTest } from './serverUnderTest.ts';

const bytesOf = async (answer: Response) => new Uint8Array(await answer.arrayBuffer());

it('sets a sheet in the words, units and days that are asked for; plain English where nothing is', async () => {
  const server = await serverUnderTest();
  const sheet = async (query: string) =>
    pdfText(await bytesOf(await server.call(`/api/protocol.pdf${query}`)));
  expect(await sheet('')).toContain('Photograph protocol');
  const german = await sheet('?language=de&units=inch');
  expect(german).toContain('Fotoprotokoll');
  expect(german).toContain('es müssen 100 mm sein');
  expect(german).toContain('mindestens 23,62 in entfernt');
  expect(await sheet('?units=inch')).toContain('at least 23.62 in away');
  // Both asked for at once: neither takes the words of the other.
  const [plain, other] = await Promise.all([sheet(''), sheet('?language=de')]);
  expect([plain.includes('Set up'), other.includes('Aufbau')]).toEqual([true, true]);
  const door = await pdfText(await bytesOf(await server.call('/api/room/door.pdf?language=de&days=sv-SE')));
  expect(door).toMatch(/Was in diesem Raum ist/);
  expect(door).toMatch(/Wie am \d{4}-\d\d-\d\d aus den Sicherheitsdatenblättern/);
});

it('refuses words that there are none in', async () => {
  const server = await serverUnderTest();
  expect((await server.call('/api/protocol.pdf?language=la')).status).toBe(400);
});

it('sets the charts of a comparison anew in other words, and hands out the kept ones else', async () => {
  const server = await serverUnderTest();
  const { id } = await server.comparison('stone.png');
  await server.until(id, 'measured');
  const ladder = `/api/comparisons/${id}/files/ladder.svg`;
  expect(await (await server.call(ladder)).text()).toBe('<svg xmlns="http://www.w3.org/2000/svg"/>');
  const german = await server.call(`${ladder}?language=de`);
  expect(german.headers.get('content-security-policy')).toContain("default-src 'none'");
  expect(await german.text()).toContain('Es wurden keine Zonen gezeichnet');
  expect((await server.call(`/api/comparisons/${id}/files/sheet.pdf?language=de`)).status).toBe(404);
});
