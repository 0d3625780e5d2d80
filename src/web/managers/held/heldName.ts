const mark = 'held ';

/** What stands for a photograph of this device, by its id here, where a kept one is named by the server's id. */
export function heldName(id: string): string {
  return mark + id;
}

/** The id on this device of a photograph that is named as above; null where it is a kept one. */
export function heldIdOf(photograph: string): string | null {
  return photograph.startsWith(mark) ? photograph.slice(mark.length) : null;
}
