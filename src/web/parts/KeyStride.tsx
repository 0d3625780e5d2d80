import './KeyStride.css';
import { useSyncExternalStore } from 'react';
import { keyStride, strides } from '../managers/keyStride.ts';
import { lengthWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';

/** How far arrow keys push on this board, in words; a press changes it, as the key 0 does. */
export function KeyStride({ unit }: { unit: 'mm' | 'px' }) {
  const stride = useSyncExternalStore(keyStride.listen, keyStride.current);
  const far = strides[stride];
  return (
    <button type="button" className="key-stride with-keys" onClick={() => keyStride.change()}>
      {unit === 'px'
        ? say('Arrow keys push by {far} px', { far })
        : say('Arrow keys push by {length}', { length: lengthWords(far, 2) })}
    </button>
  );
}
