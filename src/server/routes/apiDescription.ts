import type { App } from '../app.ts';

const methods = ['get', 'post', 'put', 'patch', 'delete'] as const;

interface Operation {
  readonly summary?: string;
  readonly parameters?: readonly {
    readonly name: string;
    readonly in: string;
    readonly description?: string;
  }[];
}

function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

function operationHtml(method: string, path: string, operation: Operation): string {
  const parameters = (operation.parameters ?? []).map(
    ({ name, in: place, description }) =>
      `<li><code>${escapeHtml(name)}</code> in ${escapeHtml(place)}${description ? `: ${escapeHtml(description)}` : ''}</li>`,
  );
  const list = parameters.length > 0 ? `<ul>${parameters.join('')}</ul>` : '';
  return `<dt><code>${method.toUpperCase()} ${escapeHtml(path)}</code></dt><dd>${escapeHtml(operation.summary ?? '')}${list}</dd>`;
}

/** The API described from the schemas that the requests are checked with: as OpenAPI JSON, and as a plain page. */
export function addApiDescription(app: App): void {
  app.get('/api/openapi.json', { schema: { hide: true } }, async (_request, reply) =>
    reply.send(app.swagger()),
  );

  app.get('/api', { schema: { hide: true } }, async (_request, reply) => {
    const paths = Object.entries(app.swagger().paths ?? {});
    const operations = paths.flatMap(([path, item]) =>
      methods.flatMap((method) => {
        const operation = (item as Partial<Record<string, Operation>>)[method];
        return operation ? [operationHtml(method, path, operation)] : [];
      }),
    );
    return reply
      .type('text/html; charset=utf-8')
      .send(
        `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Stonetone: the API</title></head><body>` +
          `<h1>The API</h1><p>In full: <a href="/api/openapi.json">OpenAPI</a>. A refused request answers ` +
          `<code>{code, message, remedy, path?}</code>.</p><dl>${operations.join('')}</dl></body></html>`,
      );
  });
}
