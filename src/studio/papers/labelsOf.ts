import type { Batch } from '../../records/batch.ts';
import type { CuratedPrint, Edition } from '../../records/edition.ts';
import type { Label } from '../../records/label.ts';
import type { Stone } from '../../records/stone.ts';
import { printLabel } from '../editions/printLabels.ts';

/** A stone's label: name, size, colour. */
export function stoneLabel({ id, name, widthMm, heightMm, colour }: Stone): Label {
  return {
    kind: 'stone',
    name,
    lines: [`${widthMm} × ${heightMm} mm`, ...(colour === '' ? [] : [colour])],
    path: `/stones/${id}`,
  };
}

/** A batch's label: what it is, when it was made, how strong; what is not known is a line to write on. */
export function batchLabel(batch: Batch): Label {
  const made = batch.madeOn ?? ('opened' in batch ? batch.opened : null);
  const strength =
    batch.kind === 'tannic'
      ? `${batch.gramsPerLitre ?? '____'} g/l, pH ${batch.pH ?? '____'}`
      : batch.kind === 'gum'
        ? `${batch.baume ?? '____'} °Bé, pH ${batch.pH ?? '____'}`
        : `lot ${batch.lot === '' ? '____' : batch.lot}`;
  return {
    kind: 'batch',
    name: batch.name,
    lines: [batch.kind, `from ${made ?? '____-__-__'}`, strength],
    path: `/batches/${batch.id}`,
  };
}

/**
 * The prints of an edition that are to have a label: those picked, or, where none of its own is picked, every one that
 * was not destroyed.
 * @param picked client ids of impressions, those of other editions among them
 */
export function printsToLabel(
  { prints }: Pick<Edition, 'prints'>,
  picked: readonly string[],
): readonly CuratedPrint[] {
  const there = prints.filter(({ kind }) => kind !== 'destroyed');
  const own = there.filter(({ impression }) => picked.includes(impression));
  return own.length > 0 ? own : there;
}

/** A label for each print of an edition that is to have one. */
export function printLabelsOf(edition: Edition, picked: readonly string[]): Label[] {
  return printsToLabel(edition, picked).map((print) => ({
    kind: 'print',
    name: printLabel(print, edition.size, edition.prints),
    lines: [
      edition.title,
      ...(edition.artist === '' ? [] : [edition.artist]),
      ...(edition.paper.name === '' ? [] : [edition.paper.name]),
      ...(edition.signedOn === null ? [] : [`signed ${edition.signedOn}`]),
    ],
    path: `/editions/${edition.id}`,
  }));
}
