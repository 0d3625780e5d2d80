import { useEffect } from 'react';
import { boardCommand } from '../../managers/boardKeys.ts';
import type { ZoneDesk } from '../../managers/zoneDesk.ts';

/** Undoing by keys wherever one is on the page, but not while typing, where the keys belong to the field. */
export function useUndoKeys(desk: ZoneDesk): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const typing = (event.target as Element).closest('input:not([type="radio"]), textarea');
      const command = typing ? null : boardCommand(event, 'nothing');
      if (command?.do !== 'undo' && command?.do !== 'redo') return;
      event.preventDefault();
      if (command.do === 'undo') desk.undo();
      else desk.redo();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [desk]);
}
