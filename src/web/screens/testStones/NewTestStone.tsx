import '../entries/Entries.css';
import './TestStones.css';
import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { TestStone } from '../../../records/testStone.ts';
import { layGrid } from '../../../studio/trials/reading/layGrid.ts';
import { addTestStone, testStoneKey, testStonesKey } from '../../client/testStones.ts';
import { wholeGrid } from '../../managers/testStones/wholeGrid.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';

/** Enters a test stone that was made by hand: its size, and its squares in rows and columns. */
export default function NewTestStone() {
  const [, go] = useLocation();
  const queries = useQueryClient();
  const saving = useSaving<TestStone>();
  const [name, setName] = useState('');
  const [width, setWidth] = useState(300);
  const [height, setHeight] = useState(400);
  const [rows, setRows] = useState(6);
  const [columns, setColumns] = useState(4);
  const [tried, setTried] = useState(false);
  const grid = wholeGrid([width, height], rows, columns);
  const patches = layGrid(grid);
  const enter = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (name.trim() === '') return;
    const factors = [
      { name: 'medium', givenTo: 'patch' },
      { name: 'etch', givenTo: 'patch' },
    ] as const;
    const saved = await saving.send(() =>
      addTestStone({ name: name.trim(), sizeMm: [width, height], grid, patches, factors }),
    );
    if (!saved) return;
    queries.setQueryData(testStoneKey(saved.id), saved);
    void queries.invalidateQueries({ queryKey: testStonesKey });
    go(`/test-stones/${saved.id}/patches`);
  };
  const whole = (set: (value: number) => void) => (value: number | null) => {
    if (value !== null) set(Math.round(value));
  };
  return (
    <>
      <PageHead
        stamp={<Link href="/test-stones">{say('Test stones')}</Link>}
        headline={say('A test stone made by hand')}
      />
      <div className="test-stone-two">
        <form className="test-stone-form" aria-label={say('A new test stone')} onSubmit={enter}>
          <Field
            label={say('Name')}
            hint={say('Such as T-1.')}
            value={name}
            onChange={(event) => setName(event.target.value)}
            trouble={tried && name.trim() === '' ? say('A name is needed.') : null}
          />
          <div className="test-stone-fields">
            <NumberField
              label={say('Width between the corners')}
              unit="mm"
              value={width}
              least={20}
              most={3000}
              onValue={whole(setWidth)}
            />
            <NumberField
              label={say('Height between the corners')}
              unit="mm"
              value={height}
              least={20}
              most={3000}
              onValue={whole(setHeight)}
            />
            <NumberField label={say('Rows')} value={rows} least={1} most={26} onValue={whole(setRows)} />
            <NumberField
              label={say('Columns')}
              value={columns}
              least={1}
              most={26}
              onValue={whole(setColumns)}
            />
          </div>
          <p className="soft">
            {say(
              'The four corners are those that you can find again on the stone and on every print: corner marks, or the corners of the outermost squares. Squares are moved to where they lie on the next page.',
            )}
          </p>
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <Button kind="act" type="submit" disabled={saving.pending}>
            {say('Enter {count} squares', { count: patches.length })}
          </Button>
        </form>
        <PatchPicture
          label={say('The stone as it would be laid out')}
          sizeMm={[width, height]}
          patches={patches.map((patch) => ({ ...patch, letter: '', words: say('square') }))}
          picked={new Set()}
          onPick={null}
        />
      </div>
    </>
  );
}
