/**
 * Keeps the built screens on a phone, so that they open while the network is gone. What the room knows is never kept here:
 * nothing under /api is touched; the bench holds its own (managers/held). A page comes from the server where it answers; what it needs is the same by its name.
 */
const shelf = 'stonetone-screens';
/** How long a server may think before the kept page is shown, ms. */
const patience = 4000;

self.addEventListener('install', (event) => {
  event.waitUntil(renew().then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== 'GET' || address.origin !== self.location.origin) return;
  if (/^\/api(\/|$)/.test(address.pathname)) return;
  if (request.mode === 'navigate') {
    const answer = fetch(request, { signal: AbortSignal.timeout(patience) });
    event.respondWith(answer.catch(() => kept('/')));
    event.waitUntil(answer.then(renew).catch(() => {}));
    return;
  }
  event.respondWith(kept(request).then((found) => (found.ok ? found : fetch(request))));
});

/** What is kept for a request; an error where nothing is. */
async function kept(request) {
  const found = await (await caches.open(shelf)).match(request, { ignoreSearch: true });
  return found ?? Response.error();
}

/** Keeps all files of the newest screens, and lets go of those of older ones. */
async function renew() {
  const cache = await caches.open(shelf);
  const { files } = await (await fetch('/screens.json', { cache: 'no-cache' })).json();
  const held = new Set((await cache.keys()).map(({ url }) => new URL(url).pathname));
  // the first page has no hash in its name: it goes with the files that it names
  const missing = files.filter((file) => !held.has(file));
  if (missing.length === 0) return;
  await cache.addAll([...new Set([...missing, '/'])]);
  for (const path of held) if (!files.includes(path)) await cache.delete(path);
}
