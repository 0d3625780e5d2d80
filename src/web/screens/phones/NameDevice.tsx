import { type FormEvent, useState } from 'react';
import type { Device } from '../../../records/device.ts';
import { renameDevice } from '../../client/devices.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';

type Named = Pick<Device, 'id' | 'name'>;

/** Gives a device its name; one that stays as it is is not sent. */
export function NameDevice({
  device,
  act,
  onNamed,
}: {
  device: Named;
  act: string;
  onNamed: (device: Named) => void;
}) {
  const [name, setName] = useState(device.name);
  const [failed, setFailed] = useState<ShownFailure | null>(null);
  const [sending, setSending] = useState(false);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (sending) return;
    setSending(true);
    setFailed(null);
    try {
      const wanted = name.trim();
      const named = wanted === device.name ? device : await renameDevice(device.id, wanted);
      onNamed({ id: named.id, name: named.name });
    } catch (thrown) {
      setFailed(shownFailure(thrown));
    }
    setSending(false);
  };
  return (
    <form className="name-device" onSubmit={submit}>
      <Field
        label={say('Its name')}
        hint={say('Such as Bench phone. A name is never given twice.')}
        value={name}
        maxLength={40}
        autoComplete="off"
        trouble={failed ? `${failed.message} ${failed.remedy}` : null}
        onChange={(event) => setName(event.target.value)}
      />
      <Button kind="act" type="submit" disabled={name.trim() === '' || sending}>
        {act}
      </Button>
    </form>
  );
}
