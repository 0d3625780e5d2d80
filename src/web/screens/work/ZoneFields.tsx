import './ZoneFields.css';
import type { WorkZone } from '../../../records/work.ts';
import type { Deposit, Intention } from '../../../records/zone.ts';
import type { DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { mediumNotSaid, type ZoneChanges } from '../../managers/zoneDrawing.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { PointFields } from './PointFields.tsx';
import { ToneFields } from './ToneFields.tsx';
import type { Media } from './useMedia.ts';

const deposits: readonly (readonly [Deposit | '', string])[] = [
  ['', say('not said')],
  ['light', say('light')],
  ['middle', say('middle')],
  ['dark', say('dark')],
  ['solid', say('solid')],
  ['wash', say('a wash, light to dark')],
];
const intentions: readonly (readonly [Intention, string])[] = [
  ['drawn', say('drawn, to print')],
  ['guide', say('a guide line, not to print')],
  ['stop-out', say('stopped out, to stay bare')],
  ['scraped-white', say('scraped white, to stay bare')],
];

/** What the zone in hand is: name, medium, deposit, intention, tone, and its points. */
export function ZoneFields({
  desk,
  state,
  zone,
  media,
}: {
  desk: ZoneDesk;
  state: DeskState;
  zone: WorkZone;
  media: Media;
}) {
  const set = (changes: ZoneChanges) => desk.change(zone.id, changes);
  const known = media.list.some(({ id }) => id === zone.medium);
  return (
    <div className="zone-fields">
      <Field
        label={say('Name')}
        autoComplete="off"
        maxLength={200}
        value={zone.name}
        trouble={zone.name.trim() === '' ? say('A name is needed.') : null}
        onChange={(event) => set({ name: event.target.value })}
      />
      <Choice
        label={say('Drawn with')}
        value={zone.medium}
        options={[
          [mediumNotSaid, say('not said yet: no rule, test a patch')] as const,
          ...(known || zone.medium === mediumNotSaid
            ? []
            : [[zone.medium, say('{medium}, not in the catalogue', { medium: zone.medium })] as const]),
          ...media.list.map(({ id, name }) => [id, name] as const),
        ]}
        onChoose={(medium) => set({ medium })}
      />
      <div className="zone-fields-pair">
        <Choice<Deposit | ''>
          label={say('Deposit')}
          value={zone.deposit ?? ''}
          options={deposits}
          onChoose={(deposit) => set({ deposit: deposit || undefined })}
        />
        <Choice<Intention>
          label={say('Meant as')}
          value={zone.intention ?? 'drawn'}
          options={intentions}
          onChoose={(intention) => set({ intention })}
        />
      </div>
      <ToneFields zone={zone} onTone={(tone) => set({ tone })} />
      <PointFields desk={desk} state={state} outline={zone.polygonMm} />
      <Button kind="quiet" onClick={() => desk.remove(zone.id)}>
        {say('Take {zone} away', { zone: zone.name.trim() || say('the zone') })}
      </Button>
    </div>
  );
}
