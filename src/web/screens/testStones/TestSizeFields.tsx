import { lengthWords } from '../../../words/lengths.ts';
import { controlsOf, type TypedTrial } from '../../managers/testStones/trialForm.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** How large a test is: its stones, what is repeated on them, and how small a difference matters. */
export function TestSizeFields({
  typed,
  strips,
  onChange,
}: {
  typed: TypedTrial;
  /** Something is given to whole strips. */
  strips: boolean;
  onChange: (changes: Partial<TypedTrial>) => void;
}) {
  const whole =
    (field: 'widthMm' | 'heightMm' | 'stones' | 'patchRepeats' | 'stripRepeats' | 'seed') =>
    (value: number | null) => {
      if (value !== null) onChange({ [field]: Math.round(value) });
    };
  type Count = {
    readonly field: Parameters<typeof whole>[0];
    readonly label: string;
    readonly unit?: string;
    readonly hint?: string;
    readonly least: number;
    readonly most: number;
  };
  const stones: readonly Count[] = [
    { field: 'widthMm', label: say('Width of the stone'), unit: 'mm', least: 60, most: 3000 },
    { field: 'heightMm', label: say('Height of the stone'), unit: 'mm', least: 60, most: 3000 },
    {
      field: 'stones',
      label: say('Stones'),
      hint: say('Only stones count as repeats; two are usually few.'),
      least: 1,
      most: 24,
    },
  ];
  const repeats: readonly Count[] = [
    {
      field: 'patchRepeats',
      label: strips ? say('Patches alike in a strip') : say('Patches alike in a block'),
      least: 1,
      most: 12,
    },
    ...(strips
      ? [{ field: 'stripRepeats' as const, label: say('Strips alike on a stone'), least: 1, most: 6 }]
      : []),
  ];
  const line = ({ field, ...shown }: Count) => (
    <NumberField key={field} {...shown} value={typed[field]} onValue={whole(field)} />
  );
  return (
    <>
      <div className="test-stone-fields">{stones.map(line)}</div>
      <Fold title={say('What else may be said: control, repeats, camera, lots')}>
        <div className="test-stone-form">
          <Choice
            label={say('The control: what the others are compared with')}
            hint={say(
              'Take something that you know, and lay it on every stone. If you choose none, each is compared with every other.',
            )}
            value={typed.control ?? ''}
            options={[
              ['', say('none: each with every other')],
              ...controlsOf(typed).map((one) => [one, told(one)] as const),
            ]}
            onChoose={(one) => onChange({ control: one === '' ? null : one })}
          />
          <div className="test-stone-fields">
            {repeats.map(line)}
            <NumberField
              label={say('Smallest difference that matters')}
              unit={say('coverage')}
              hint={say('0.1: a tone of 0.30 comes out as 0.40. Empty: not said.')}
              value={typed.wanted}
              least={0.01}
              most={1}
              needed={false}
              onValue={(wanted) => onChange({ wanted })}
            />
          </div>
          {!strips && (
            <Picks<TypedTrial['lay']>
              label={say('Patches lie')}
              value={typed.lay}
              options={[
                ['blocked', say('in two blocks, head and tail')],
                ['row-column', say('in rows and columns')],
              ]}
              onPick={(lay) => onChange({ lay })}
            />
          )}
          <NumberField
            label={say('Long side of the camera’s picture')}
            unit="px"
            hint={say('So that no patch is too small to be read. Empty: {least} at least.', {
              least: lengthWords(12),
            })}
            value={typed.cameraPixels}
            least={200}
            most={100_000}
            needed={false}
            onValue={(cameraPixels) => onChange({ cameraPixels })}
          />
          <NumberField
            label={say('Number that the lots are drawn from')}
            hint={say('The same number draws the same lots.')}
            value={typed.seed}
            least={0}
            most={4_294_967_295}
            onValue={whole('seed')}
          />
        </div>
      </Fold>
    </>
  );
}
