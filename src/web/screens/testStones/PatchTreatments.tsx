import { type ReactNode, useState } from 'react';
import type { StonePatch, TestStone } from '../../../records/testStone.ts';
import { patchesStamp, patchLetter } from '../../managers/testStones/patchLetters.ts';
import { pickedAfter, type Reach } from '../../managers/testStones/pickedPatches.ts';
import { Button } from '../../parts/Button.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { DrawnStone } from './DrawnStone.tsx';
import { FactorFields } from './FactorFields.tsx';
import { GridFields } from './GridFields.tsx';
import { PatchFields } from './PatchFields.tsx';
import type { PatchDesk } from './usePatchDesk.ts';

/** What patches got: typed for a whole row or column at once. */
export function PatchTreatments({
  stone,
  desk,
  saves,
  told,
  onDraw,
}: {
  stone: TestStone;
  desk: PatchDesk;
  /** The button that saves. */
  saves: ReactNode;
  /** What came of saving. */
  told: ReactNode;
  onDraw: () => void;
}) {
  const { patches, factors, grid } = desk;
  const [picked, setPicked] = useState<ReadonlySet<string>>(new Set());
  const [reach, setReach] = useState<Reach>('row');
  return (
    <>
      <PageHead stamp={patchesStamp(stone.name, patches.length)} headline={say('What did each patch get?')}>
        {saves}
      </PageHead>
      <div className="test-stone-two">
        <div className="test-stone-form">
          {told}
          <Picks<Reach>
            label={say('A press on a patch picks')}
            value={reach}
            options={[
              ['row', say('its row')],
              ['column', say('its column')],
              ['patch', say('it alone')],
            ]}
            onPick={setReach}
          />
          {picked.size === 0 ? (
            <p className="soft">
              {say(
                'Press a patch on the stone to pick its row; then type what it got. Pick several rows to type for all of them.',
              )}
            </p>
          ) : (
            <PatchFields
              key={[...picked].join(' ')}
              patches={patches}
              factors={factors}
              picked={picked}
              onPatches={desk.say}
              onDone={() => setPicked(new Set())}
            />
          )}
          <Button onClick={onDraw}>{say('Draw and move patches')}</Button>
          <Fold title={say('What was varied, and how it was given')}>
            <FactorFields factors={factors} onFactors={desk.vary} />
          </Fold>
          {grid && (
            <Fold title={say('Where the squares lie')}>
              <GridFields
                grid={grid}
                onGrid={(next) => {
                  desk.lay(next);
                  setPicked(new Set());
                }}
              />
            </Fold>
          )}
        </div>
        <PatchPicture
          label={say('Patches on the stone')}
          sizeMm={stone.sizeMm}
          patches={patches.map((patch) => ({
            id: patch.id,
            row: patch.row,
            column: patch.column,
            polygonMm: patch.polygonMm,
            letter: patchLetter(patch),
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

const kindWords = {
  control: say('control'),
  guide: say('guide'),
  'stop-out': say('stop-out'),
} as const;

function treatmentWords({ treatment, intention }: StonePatch): string {
  const levels = Object.entries(treatment).map(([factor, level]) => `${told(factor)} ${told(level)}`);
  const what = intention === 'image' ? [] : [kindWords[intention]];
  return [...what, ...(levels.length === 0 ? [say('nothing typed')] : levels)].join(', ');
}
