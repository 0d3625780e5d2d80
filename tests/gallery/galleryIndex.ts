import { charts, sheets } from './exhibits.ts';

/** The names of all kept files, the index itself included. */
export function keptNames(): readonly string[] {
  return [
    'index.html',
    ...charts.map(({ name }) => `${name}.svg`),
    ...sheets.flatMap((sheet) => [`${sheet.name}.txt`, ...pageNames(sheet.name, sheet.pages)]),
  ].sort();
}

/** The names of a sheet's kept pages, in order. */
export function pageNames(name: string, pages: number): readonly string[] {
  return Array.from({ length: pages }, (_, page) => `${name}-page-${page + 1}.png`);
}

/** A page through which a person can leaf: every chart, then every page of every sheet. */
export function galleryIndex(): string {
  const figure = (file: string) =>
    `<figure><img src="${file}" alt="${file}"><figcaption>${file}</figcaption></figure>`;
  return [
    '<!doctype html>',
    '<html lang="en"><head><meta charset="utf-8"><title>Gallery of charts and sheets</title>',
    '<style>body{font:16px/1.4 Archivo,sans-serif;margin:32px;background:#e7e1d4;color:#1a1714}',
    'figure{display:inline-block;margin:0 24px 32px 0;vertical-align:top}img{background:#fff;max-width:100%}',
    'figcaption{font-size:14px}h2{border-top:1.5px solid;padding-top:8px}</style></head><body>',
    '<h1>Gallery of charts and sheets</h1>',
    '<h2>Charts</h2>',
    ...charts.map(({ name }) => figure(`${name}.svg`)),
    ...sheets.flatMap(({ name, pages }) => [`<h2>${name}</h2>`, ...pageNames(name, pages).map(figure)]),
    '</body></html>',
    '',
  ].join('\n');
}
