import multipart from '@fastify/multipart';
import swagger from '@fastify/swagger';
import fastify, { type FastifyReply } from 'fastify';
import { createJsonSchemaTransform, type ZodTypeProvider } from 'fastify-type-provider-zod';
import type { Services } from '../application/openServices.ts';
import { askedIn } from '../application/threads/wordsAskedFor.ts';
import { wordChoiceOf } from '../contract/sheetWords.ts';
import { failure } from '../foundation/failure.ts';
import type { NetworkState } from '../records/device.ts';
import type { App } from './app.ts';
import { failureOfError } from './failureOfError.ts';
import { sendFailure } from './failureReply.ts';
import { createAdmission, isSecure } from './guards/admitCaller.ts';
import { doorOf } from './guards/doorOf.ts';
import { securityHeaders, trustedAddressHeaders } from './guards/securityHeaders.ts';
import { judgeCaller } from './guards/trustedCaller.ts';
import {
  headTimeoutMs,
  idleTimeoutMs,
  jsonLimitBytes,
  keptConnectionMs,
  requestTimeoutMs,
} from './limits.ts';
import { requestCheck } from './requestCheck.ts';
import { addApiDescription } from './routes/apiDescription.ts';
import { addBatchRoutes } from './routes/batchRoutes.ts';
import { addBenchRoutes } from './routes/benchRoutes.ts';
import { addBookRoutes } from './routes/bookRoutes.ts';
import { addComparisonFileRoutes } from './routes/comparisonFileRoutes.ts';
import { addComparisonRoutes } from './routes/comparisonRoutes.ts';
import { addCopiesRoute } from './routes/copiesRoute.ts';
import { addDayRoutes } from './routes/dayRoutes.ts';
import { addDeviceRoutes } from './routes/deviceRoutes.ts';
import { addEditionRoutes } from './routes/editionRoutes.ts';
import { addEtchTableIssueRoutes } from './routes/etchTableIssueRoutes.ts';
import { addEtchTableRoutes } from './routes/etchTableRoutes.ts';
import { addEventRoutes } from './routes/eventRoutes.ts';
import { addExportRoute } from './routes/exportRoute.ts';
import { addInkRoutes } from './routes/inkRoutes.ts';
import { addKitRoutes } from './routes/kitRoutes.ts';
import { addKnownHoldsRoutes } from './routes/knownHoldsRoutes.ts';
import { addLedgerRoutes } from './routes/ledgerRoutes.ts';
import { addMaterialRoutes } from './routes/materialRoutes.ts';
import { addMediumRoutes } from './routes/mediumRoutes.ts';
import { addMixtureRoutes } from './routes/mixtureRoutes.ts';
import { addPhotographRoutes } from './routes/photographRoutes.ts';
import { addPlanRoutes } from './routes/planRoutes.ts';
import { addPlanSheetRoutes } from './routes/planSheetRoutes.ts';
import { addProtocolRoute } from './routes/protocolRoute.ts';
import { addPullChangeRoutes } from './routes/pullChangeRoutes.ts';
import { addPullRoutes } from './routes/pullRoutes.ts';
import { addPullSuspectRoutes } from './routes/pullSuspectRoutes.ts';
import { addRackRoutes } from './routes/rackRoutes.ts';
import { addReportRoutes } from './routes/reportRoutes.ts';
import { addRoomRoutes } from './routes/roomRoutes.ts';
import { addRunRoutes } from './routes/runRoutes.ts';
import { addScreens } from './routes/screens.ts';
import { addSecondEtchRoutes } from './routes/secondEtchRoutes.ts';
import { addSeriesRoutes } from './routes/seriesRoutes.ts';
import { addStoneRoutes } from './routes/stoneRoutes.ts';
import { addSuspectRoutes } from './routes/suspectRoutes.ts';
import { addTestBenchRoutes } from './routes/testBenchRoutes.ts';
import { addTestPlanRoutes } from './routes/testPlanRoutes.ts';
import { addTestStoneReadingRoutes } from './routes/testStoneReadingRoutes.ts';
import { addTestStoneRoutes } from './routes/testStoneRoutes.ts';
import { addTestStoneSheetRoutes } from './routes/testStoneSheetRoutes.ts';
import { addTrialRoutes } from './routes/trialRoutes.ts';
import { addUploadRoutes } from './routes/uploadRoutes.ts';
import { addWorkProtocolRoutes } from './routes/workProtocolRoutes.ts';
import { addWorkRoutes } from './routes/workRoutes.ts';
import { addZonesFileRoutes } from './routes/zonesFileRoutes.ts';
import { addZoneToneRoutes } from './routes/zoneToneRoutes.ts';

export interface AppOptions {
  /** Names under which requests may address this server; asked at each request, since the port comes late. */
  readonly hosts: () => ReadonlySet<string>;
  /** The same for requests that come by the network's door; none unless given. */
  readonly networkHosts?: () => ReadonlySet<string>;
  /** How phones reach this machine; not at all unless given. */
  readonly network?: () => NetworkState;
  /** Folder of the built screens, unless the package's own. */
  readonly screens?: string;
}

const noHosts: ReadonlySet<string> = new Set();
/** How phones reach this machine while nobody opened the network. */
export const noNetwork: NetworkState = { open: false, addresses: [], certificate: null };

function neverAsked(): never {
  throw new Error('requests are checked by requestCheck alone');
}

function sendError(reply: FastifyReply, error: unknown): FastifyReply {
  const known = failureOfError(error);
  if (known) return sendFailure(reply, known);
  console.error('request failed:', error);
  return sendFailure(reply, failure('internal', { why: 'the server met something unexpected' }));
}

/** The HTTP server with its guards and routes, not yet listening. */
export async function buildApp(services: Services, options: AppOptions): Promise<App> {
  const app: App = fastify({
    bodyLimit: jsonLimitBytes,
    requestTimeout: requestTimeoutMs,
    connectionTimeout: idleTimeoutMs,
    keepAliveTimeout: keptConnectionMs,
    forceCloseConnections: true,
    routerOptions: { maxParamLength: 120 },
    // named, so that the library does not load its own; ours are set below
    schemaController: { compilersFactory: { buildValidator: neverAsked, buildSerializer: neverAsked } },
    // what is refused before there is a route for it goes past no hook
    frameworkErrors: (error, _request, reply) => sendError(reply.headers(securityHeaders), error),
  }).withTypeProvider<ZodTypeProvider>();
  app.server.headersTimeout = headTimeoutMs;
  app.setValidatorCompiler(requestCheck);
  // answers come typed from the use cases; checking them again would only take time
  app.setSerializerCompiler(() => JSON.stringify);

  const admit = createAdmission(services);
  app.addHook('onRequest', async (request, reply) => {
    reply.headers(securityHeaders);
    // what holds something of the room is kept by no browser, unless its route says so
    if (request.routeOptions.url?.startsWith('/api')) reply.header('cache-control', 'no-store');
    const { host, origin } = request.headers;
    const site = request.headers['sec-fetch-site'];
    const mode = request.headers['sec-fetch-mode'];
    const door = doorOf(request.raw.socket);
    const hosts = door === 'this-machine' ? options.hosts() : (options.networkHosts?.() ?? noHosts);
    const secure = isSecure(request);
    if (secure || door === 'this-machine') reply.headers(trustedAddressHeaders);
    const caller = { host, origin, site: String(site), mode: String(mode), secure };
    const fault = judgeCaller(caller, hosts) ?? (await admit(request, door));
    if (fault) return sendFailure(reply, fault);
  });
  // The sheets that a request makes are set in the words that it asks for.
  app.addHook('preHandler', (request, _reply, done) => {
    askedIn(wordChoiceOf(request.query), done);
  });
  app.setErrorHandler(async (error, _request, reply) => sendError(reply, error));

  await app.register(multipart, {
    throwFileSizeLimit: false,
    limits: { files: 1, fields: 5, parts: 6, fieldSize: 1000, fileSize: services.largestBytes + 1 },
  });
  await app.register(swagger, {
    openapi: { openapi: '3.1.0', info: { title: 'Stonetone', version: '1' } },
    transform: createJsonSchemaTransform({}),
  });
  addStoneRoutes(app, services);
  addSuspectRoutes(app, services);
  addPullSuspectRoutes(app, services);
  addWorkRoutes(app, services);
  addZonesFileRoutes(app, services);
  addZoneToneRoutes(app, services);
  addPlanRoutes(app, services);
  addPlanSheetRoutes(app, services);
  addSecondEtchRoutes(app, services);
  addRunRoutes(app, services);
  addPullRoutes(app, services);
  addPullChangeRoutes(app, services);
  addSeriesRoutes(app, services);
  addBenchRoutes(app, services);
  addRackRoutes(app, services);
  addDayRoutes(app, services);
  addEditionRoutes(app, services);
  addLedgerRoutes(app, services);
  addEtchTableRoutes(app, services);
  addEtchTableIssueRoutes(app, services);
  addMediumRoutes(app, services);
  addBatchRoutes(app, services);
  addInkRoutes(app, services);
  addKitRoutes(app, services);
  addMixtureRoutes(app);
  addRoomRoutes(app);
  addMaterialRoutes(app, services);
  addTestStoneRoutes(app, services);
  addTestPlanRoutes(app, services);
  addTestBenchRoutes(app, services);
  addTrialRoutes(app, services);
  addTestStoneSheetRoutes(app, services);
  addKnownHoldsRoutes(app, services);
  addTestStoneReadingRoutes(app, services);
  addComparisonRoutes(app, services);
  addComparisonFileRoutes(app, services);
  addPhotographRoutes(app, services);
  await addUploadRoutes(app, services);
  addProtocolRoute(app, services);
  addWorkProtocolRoutes(app, services);
  addReportRoutes(app, services);
  addBookRoutes(app, services);
  addEventRoutes(app, services);
  addDeviceRoutes(app, services, options.network ?? (() => noNetwork));
  addExportRoute(app, services);
  addCopiesRoute(app, services);
  addApiDescription(app);
  await addScreens(app, options.screens);
  return app;
}
