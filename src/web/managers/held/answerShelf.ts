import { type HeldAnswer, openHeld, patient } from './heldDatabase.ts';

/** How long an answer is held that was not heard anew, ms: as long as a stone may rest between two days at the bench. */
const holdMs = 7 * 86_400_000;

/** Holds what the server answered, in place of what it answered before; a browser that can't hold it goes without. */
export async function holdAnswer(key: string, value: unknown, heardAt: number): Promise<void> {
  try {
    const database = await openHeld();
    await database.put('answers', { value, heardAt }, key);
    const keys = await database.getAllKeys('answers');
    for (const other of keys) {
      const answer = await database.get('answers', other);
      if (answer && heardAt - answer.heardAt > holdMs) await database.delete('answers', other);
    }
  } catch {
    // the page works with the answer itself
  }
}

/** What the server answered last, on this device; null where nothing is held. */
export async function heldAnswer(key: string): Promise<HeldAnswer | null> {
  try {
    return (await patient((await openHeld()).get('answers', key))) ?? null;
  } catch {
    return null;
  }
}

/** Lets go of all that is held of the room; what is not sent yet stays, since it happened. */
export async function dropAnswers(): Promise<void> {
  try {
    await (await openHeld()).clear('answers');
  } catch {
    // nothing is held where nothing can be
  }
}
