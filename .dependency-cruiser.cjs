/** The rooms of the code and what each may look into: arrows go down only. See docs/ARCHITECTURE.md. */
const rooms = {
  foundation: [],
  science: ['foundation'],
  records: ['foundation', 'science'],
  imaging: ['foundation', 'science', 'records'],
  studio: ['foundation', 'science', 'records'],
  store: ['foundation', 'records'],
  words: ['foundation', 'science', 'records'],
  paper: ['foundation', 'science', 'records', 'studio', 'words'],
  application: ['foundation', 'science', 'records', 'imaging', 'studio', 'store', 'paper', 'words'],
  contract: ['foundation', 'science', 'records'],
  server: ['foundation', 'records', 'application', 'contract'],
  web: ['foundation', 'science', 'records', 'studio', 'contract', 'words', 'paper/charts'],
  sample: ['foundation', 'science', 'records', 'studio', 'imaging', 'application'],
  cli: ['foundation', 'science', 'records', 'studio', 'application', 'contract', 'server', 'sample'],
};

/** Each native or heavy library has one door. */
const doors = {
  sharp: 'src/imaging/codecs/pictureLibrary.ts',
  'heic-decode': 'src/imaging/codecs/heicLibrary.ts',
  'better-sqlite3': 'src/store/database/openDatabase.ts',
  pdfmake: 'src/paper/sheets/pdfDocument.ts',
  docx: 'src/paper/documents/reportDocx.ts',
  selfsigned: 'src/application/network/makeCertificate.ts',
  uqr: 'src/paper/sheets/labels/codeMatrix.ts',
  'csv-parse': 'src/application/trials/readTrialTable.ts',
  fflate: 'src/application/zipLibrary.ts',
  'ical-generator': 'src/application/days/calendarFeed.ts',
  'tar-stream': 'src/store/backup/archive.ts',
  'polygon-clipping': 'src/science/geometry/polygonArea.ts',
  'ml-matrix': 'src/science/algebra/denseMatrices.ts',
  idb: 'src/web/managers/held/heldDatabase.ts',
  '@noble/hashes': 'src/web/client/fileHash.ts',
  'fft.js': 'src/imaging/matching/spectrum.ts',
};

const inside = (names) => `^src/(${names.join('|')})/`;

module.exports = {
  forbidden: [
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    ...Object.entries(rooms).map(([room, below]) => ({
      name: `${room}-looks-down-only`,
      severity: 'error',
      from: { path: `^src/${room}/`, pathNot: '\\.test\\.tsx?$' },
      to: { path: '^src/', pathNot: inside([room, ...below]) },
    })),
    ...Object.entries(doors).map(([library, door]) => ({
      name: `one-door-for-${library}`,
      severity: 'error',
      from: { path: '^src/', pathNot: [`^${door.replaceAll('.', '\\.')}$`, '\\.test\\.tsx?$'] },
      to: { path: `node_modules/${library}/` },
    })),
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.d\\.ts$' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js'] },
    tsConfig: { fileName: 'tsconfig.json' },
  },
};
