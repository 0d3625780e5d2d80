/** What the machine itself alone may read: the room's records in one piece, places on its disk, and who is let in. */
const ownReads = /^\/api\/(?:export|copies|backups?|restore|devices|letting-in|network)(?:[/.]|$)/;

/**
 * What a device may write, by method and route: what happens at stone, press and proofs, and questions that keep
 * nothing. All else, also what is added later, orders the room and is done on the machine itself: tables, media, materials,
 * people and hours, stones and works as such, archiving, deleting, papers, devices, copies.
 */
const deviceWrites: ReadonlySet<string> = new Set([
  'POST /api/runs',
  'POST /api/runs/:id/events',
  'POST /api/editions/:id/ledger',
  'POST /api/photographs',
  'POST /api/uploads',
  'PATCH /api/uploads/:id',
  'POST /api/uploads/:id/photograph',
  'DELETE /api/uploads/:id',
  'PATCH /api/stones/:id',
  'PATCH /api/works/:id',
  'POST /api/works/:id/zone-tones',
  'POST /api/works/:id/second-etch',
  'POST /api/works/:id/pulls',
  'PATCH /api/works/:id/pulls/:pull',
  'POST /api/works/:id/pulls/:pull/measure',
  'POST /api/works/:id/pulls/:pull/stop',
  'POST /api/works/:id/approvals',
  'POST /api/works/:id/suspects/outcomes',
  'POST /api/comparisons',
  'POST /api/comparisons/:id/measuring',
  'DELETE /api/comparisons/:id/measuring',
  'POST /api/comparisons/:id/suspects/outcomes',
  'PATCH /api/test-stones/:id',
  'POST /api/test-stones/:id/readings',
  'POST /api/test-stones/:id/events',
  'POST /api/batches',
  'PATCH /api/batches/:id',
  'POST /api/kit',
  'POST /api/inks',
  'PATCH /api/inks/:id',
  'POST /api/works/:id/day-plan',
  'POST /api/inks/question',
  'POST /api/mixtures',
  'POST /api/room',
]);

/** What anybody on the network may ask: who am I, and let me in. */
const strangerAsks: ReadonlySet<string> = new Set(['GET /api/caller', 'POST /api/devices']);

/** What a device may do about itself, and about no other. */
const ofItself: ReadonlySet<string> = new Set([
  'PUT /api/devices/:id/name',
  'POST /api/devices/:id/shut-out',
]);

/** Who may use a route over the network. */
export type Reach = 'anybody' | 'device' | 'device-itself' | 'this-machine';

/** @param route as it was added, such as `/api/runs/:id`; undefined: there is none, so that nothing can be reached */
export function reachOf(method: string, route: string | undefined): Reach {
  const asked = method === 'HEAD' ? 'GET' : method;
  if (route === undefined || !route.startsWith('/api')) return asked === 'GET' ? 'device' : 'this-machine';
  const named = `${asked} ${route}`;
  if (strangerAsks.has(named)) return 'anybody';
  if (ofItself.has(named)) return 'device-itself';
  if (asked === 'GET') return ownReads.test(route) ? 'this-machine' : 'device';
  return deviceWrites.has(named) ? 'device' : 'this-machine';
}
