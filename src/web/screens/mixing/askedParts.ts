import type { AskTyped } from '../../managers/asking/askForm.ts';
import type { MixForm } from '../../managers/mixing/mixForm.ts';

/**
 * The parts that an address asks for, such as `part=gum:1&part=water:1&ml=60`, so that a plan can hand them over.
 * Null where it asks for none, or where the question has no parts.
 */
export function askedParts(form: MixForm, search: string): AskTyped | null {
  if (form.kind !== 'parts') return null;
  const query = new URLSearchParams(search);
  const lines = query.getAll('part').flatMap((part) => {
    const [, material, parts] = /^(.+):([^:]+)$/.exec(part) ?? [];
    return material !== undefined && parts !== undefined ? [{ material, parts }] : [];
  });
  return lines.length === 0 ? null : { fields: { totalMl: query.get('ml') ?? '' }, lines };
}

/** The address that asks for those parts. */
export function partsAddress(
  parts: readonly { readonly material: string; readonly parts: number }[],
): string {
  const query = new URLSearchParams(parts.map((each) => ['part', `${each.material}:${each.parts}`]));
  return `/mixing/parts?${query}`;
}
