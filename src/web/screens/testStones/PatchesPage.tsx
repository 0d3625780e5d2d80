import { useState } from 'react';
import type { PatchGrid, StonePatch, TestFactor } from '../../../records/testStone.ts';
import { layGrid } from '../../../studio/trials/reading/layGrid.ts';
import { pickedAfter, type Reach } from '../../managers/testStones/pickedPatches.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { DrawnStone } from './DrawnStone.tsx';
import { FactorFields } from './FactorFields.tsx';
import { GridFields } from './GridFields.tsx';
import { PatchFields } from './PatchFields.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

const letters = { image: '', control: 'C', guide: 'G', 'stop-out': 'S' } as const;

/** Where patches lie, and what each got: typed for a whole row or column at once. */
export function PatchesPage({ stone, save, saving }: TestStonePageParts) {
  const [patches, setPatches] = useState<readonly StonePatch[]>(stone.patches);
  const [factors, setFactors] = useState<readonly TestFactor[]>(stone.factors);
  const [grid, setGrid] = useState<PatchGrid | null>(stone.grid);
  const [picked, setPicked] = useState<ReadonlySet<string>>(new Set());
  const [reach, setReach] = useState<Reach>('row');
  const [kept, setKept] = useState(false);
  const change = (next: readonly StonePatch[]) => {
    setPatches(next);
    setKept(false);
  };
  const lay = (next: PatchGrid) => {
    setGrid(next);
    const outside = patches.filter(({ row }) => row === null);
    change([...layGrid(next, patches), ...outside]);
    setPicked(new Set());
  };
  const keep = async () => {
    const saved = await save({ patches, factors, grid });
    if (saved) setKept(true);
  };
  return (
    <>
      <PageHead stamp={`${stone.name}, ${patches.length} patches`} headline="What did each patch get?">
        <Button kind="act" disabled={saving.pending} onClick={() => void keep()}>
          Save the patches
        </Button>
      </PageHead>
      <div className="test-stone-two">
        <div className="test-stone-form">
          {kept && (
            <p role="status">
              Saved.{' '}
              <ButtonLink href={`/test-stones/${stone.id}/photographs`}>On to the photographs</ButtonLink>
            </p>
          )}
          <Picks<Reach>
            label="A press on a patch picks"
            value={reach}
            options={[
              ['row', 'its row'],
              ['column', 'its column'],
              ['patch', 'it alone'],
            ]}
            onPick={setReach}
          />
          {picked.size === 0 ? (
            <p className="soft">
              Press a patch on the stone to pick its row; then type what it got. Pick several rows to type for
              all of them.
            </p>
          ) : (
            <PatchFields
              key={[...picked].join(' ')}
              patches={patches}
              factors={factors}
              picked={picked}
              onPatches={change}
              onDone={() => setPicked(new Set())}
            />
          )}
          <Fold title="What was varied, and how it was given">
            <FactorFields
              factors={factors}
              onFactors={(next) => {
                setFactors(next);
                setKept(false);
              }}
            />
          </Fold>
          {grid && (
            <Fold title="Where the squares lie">
              <GridFields grid={grid} onGrid={lay} />
            </Fold>
          )}
        </div>
        <PatchPicture
          label="Patches on the stone"
          sizeMm={stone.sizeMm}
          patches={patches.map((patch) => ({
            id: patch.id,
            polygonMm: patch.polygonMm,
            letter: letters[patch.intention] === '' ? patch.id : `${patch.id} ${letters[patch.intention]}`,
            words: treatmentWords(patch),
          }))}
          picked={picked}
          onPick={(id) => setPicked(pickedAfter(patches, picked, id, reach))}
          picture={<DrawnStone stone={stone} />}
        />
      </div>
    </>
  );
}

function treatmentWords({ treatment, intention }: StonePatch): string {
  const levels = Object.entries(treatment).map(([factor, level]) => `${factor} ${level}`);
  const what = intention === 'image' ? [] : [intention];
  return [...what, ...(levels.length === 0 ? ['nothing typed'] : levels)].join(', ');
}
