import type { QueryClient } from '@tanstack/react-query';
import type { AttachedPhotograph, PhotographState } from '../../records/attachedPhotograph.ts';
import type { StoneEntry } from '../../records/stoneEntry.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { HeldPhotograph, PhotographBelongs } from '../managers/held/heldPhotograph.ts';
import { testStoneWith } from '../managers/testStones/testStoneWith.ts';
import { say } from '../words/say.ts';
import { holdLedgerEntry, sendLedgerEntry } from './editions.ts';
import { FailedRequest } from './shownFailure.ts';
import { openStone, saveStone, stoneKey } from './stones.ts';
import { openTestStone, saveTestStone, testStoneKey } from './testStones.ts';
import { openWork, saveWork, workKey } from './works.ts';

/** How often a save is put to what somebody else saved in between. */
const mostTries = 5;

/**
 * Enters a photograph that the server keeps where it belongs, and brings that into what the page holds. Asked again, it
 * is entered once: a list holds a photograph once, and a ledger an entry by its id.
 *
 * @returns false where a screen has to take it up: it belongs to something that is not saved yet
 */
export async function enterPhotograph(
  queries: QueryClient,
  photograph: HeldPhotograph,
  kept: string,
): Promise<boolean> {
  const { belongs, takenAt } = photograph;
  switch (belongs.to) {
    case 'work': {
      const open = () => openWork(belongs.workId);
      const entered = await attach<WorkEntry>(open, saveWork, attachedOf(kept, belongs.state, takenAt));
      queries.setQueryData(workKey(belongs.workId), entered);
      return true;
    }
    case 'stone': {
      const open = () => openStone(belongs.stoneId);
      const entered = await attach<StoneEntry>(open, saveStone, attachedOf(kept, belongs.state, takenAt));
      queries.setQueryData(stoneKey(belongs.stoneId), entered);
      return true;
    }
    case 'impression': {
      const { editionId, impression, ageMinutes, actor, device } = belongs;
      const entry = await sendLedgerEntry(editionId, {
        clientId: photograph.id,
        kind: 'photographed',
        // where an age was typed, the moment of taking says nothing more
        payload: { impression, photograph: kept, takenAt: ageMinutes === null ? takenAt : null, ageMinutes },
        at: takenAt,
        sentAt: new Date().toISOString(),
        actor,
        device,
      });
      holdLedgerEntry(queries, editionId, entry);
      return true;
    }
    case 'test-stone': {
      const entered = await enterOnTestStone(photograph.id, belongs, kept);
      queries.setQueryData(testStoneKey(belongs.testStoneId), entered);
      return true;
    }
    case 'pull-draft':
    case 'reading':
    case 'comparison':
      return false;
    default:
      return belongs satisfies never;
  }
}

function attachedOf(photograph: string, state: PhotographState, takenAt: string): AttachedPhotograph {
  return { photograph, state, takenAt, corners: null, note: '' };
}

interface WithPhotographs {
  readonly id: string;
  readonly version: number;
  readonly photographs: readonly AttachedPhotograph[];
}

/** Puts a photograph to a test stone, unless it is there; refused where somebody else put another in its place. */
async function enterOnTestStone(
  id: string,
  belongs: Extract<PhotographBelongs, { readonly to: 'test-stone' }>,
  kept: string,
): Promise<TestStone> {
  for (let tries = 1; ; tries++) {
    const now = await openTestStone(belongs.testStoneId);
    const changes = testStoneWith(now, { id, kept, belongs });
    if (changes === 'there') return now;
    if (changes === 'replaced')
      throw new FailedRequest({
        code: 'photograph-replaced',
        message: say('The stone was given another photograph meanwhile.'),
        remedy: say('Open the test stone: where this one is the better, take it again there.'),
      });
    try {
      return await saveTestStone(now.id, now.version, changes);
    } catch (thrown) {
      const stale = thrown instanceof FailedRequest && thrown.failure.code === 'stale-save';
      if (!stale || tries >= mostTries) throw thrown;
    }
  }
}

/** Puts a photograph behind those that are attached, unless it is there. */
async function attach<Entry extends WithPhotographs>(
  open: () => Promise<Entry>,
  save: (
    id: string,
    version: number,
    changes: { readonly photographs: readonly AttachedPhotograph[] },
  ) => Promise<Entry>,
  attached: AttachedPhotograph,
): Promise<Entry> {
  for (let tries = 1; ; tries++) {
    const now = await open();
    if (now.photographs.some(({ photograph }) => photograph === attached.photograph)) return now;
    try {
      return await save(now.id, now.version, { photographs: [...now.photographs, attached] });
    } catch (thrown) {
      const stale = thrown instanceof FailedRequest && thrown.failure.code === 'stale-save';
      if (!stale || tries >= mostTries) throw thrown;
    }
  }
}
