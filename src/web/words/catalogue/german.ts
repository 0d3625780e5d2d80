// written by tools/words.js
import asking from './de/asking.json' with { type: 'json' };
import batches from './de/batches.json' with { type: 'json' };
import bench from './de/bench.json' with { type: 'json' };
import camera from './de/camera.json' with { type: 'json' };
import changes from './de/changes.json' with { type: 'json' };
import client from './de/client.json' with { type: 'json' };
import days from './de/days.json' with { type: 'json' };
import editions from './de/editions.json' with { type: 'json' };
import entries from './de/entries.json' with { type: 'json' };
import everywhere from './de/everywhere.json' with { type: 'json' };
import held from './de/held.json' with { type: 'json' };
import inks from './de/inks.json' with { type: 'json' };
import keeping from './de/keeping.json' with { type: 'json' };
import kit from './de/kit.json' with { type: 'json' };
import known from './de/known.json' with { type: 'json' };
import labels from './de/labels.json' with { type: 'json' };
import managers from './de/managers.json' with { type: 'json' };
import materials from './de/materials.json' with { type: 'json' };
import mixing from './de/mixing.json' with { type: 'json' };
import papers from './de/papers.json' with { type: 'json' };
import parts from './de/parts.json' with { type: 'json' };
import phones from './de/phones.json' with { type: 'json' };
import proofs from './de/proofs.json' with { type: 'json' };
import protocols from './de/protocols.json' with { type: 'json' };
import rack from './de/rack.json' with { type: 'json' };
import room from './de/room.json' with { type: 'json' };
import screens from './de/screens.json' with { type: 'json' };
import stone from './de/stone.json' with { type: 'json' };
import suspects from './de/suspects.json' with { type: 'json' };
import tables from './de/tables.json' with { type: 'json' };
import testStones from './de/testStones.json' with { type: 'json' };
import words from './de/words.json' with { type: 'json' };
import work from './de/work.json' with { type: 'json' };

/** English sentence → the same in German, of all rooms. */
export const german: Readonly<Record<string, string>> = {
  ...asking,
  ...batches,
  ...bench,
  ...camera,
  ...changes,
  ...client,
  ...days,
  ...editions,
  ...entries,
  ...everywhere,
  ...held,
  ...inks,
  ...keeping,
  ...kit,
  ...known,
  ...labels,
  ...managers,
  ...materials,
  ...mixing,
  ...papers,
  ...parts,
  ...phones,
  ...proofs,
  ...protocols,
  ...rack,
  ...room,
  ...screens,
  ...stone,
  ...suspects,
  ...tables,
  ...testStones,
  ...words,
  ...work,
};
