import type { JsonSchema } from './jsonSchema.ts';

interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query' | 'header' | 'cookie';
  readonly required?: boolean;
  readonly schema: JsonSchema;
}

/** One route as the API's own description tells it. */
export interface Operation {
  readonly method: string;
  /** Such as `/api/works/{id}`. */
  readonly path: string;
  readonly parameters: readonly Parameter[];
  /** Null where it takes none. */
  readonly body: JsonSchema | null;
  /** Whether it takes a photograph as a multipart form. */
  readonly upload: boolean;
  /** Whether it takes bytes as they are. */
  readonly bytes: boolean;
  /** Whether it draws a sheet, packs an archive or searches a photograph: some 100 times the work of the others. */
  readonly heavy: boolean;
}

interface Description {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Described>>>>;
}

interface Described {
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: JsonSchema }>> };
}

/** Never ends: it is the stream of events. */
const endless = '/api/events';

/** The routes of an OpenAPI description, but for the one that never ends. */
export function describedOperations({ paths }: Description): readonly Operation[] {
  return Object.entries(paths).flatMap(([path, methods]) =>
    path === endless
      ? []
      : Object.entries(methods).map(([method, { parameters = [], requestBody }]) => ({
          method: method.toUpperCase(),
          path,
          parameters,
          body: requestBody?.content['application/json']?.schema ?? null,
          upload: method === 'post' && path === '/api/photographs',
          bytes: method === 'patch' && path === '/api/uploads/{id}',
          heavy: /\.(pdf|docx|zip)$|\/corners$|\/zone-tones$|\/download$|^\/api\/copies/.test(path),
        })),
  );
}
