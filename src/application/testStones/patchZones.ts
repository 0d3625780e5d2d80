import type { PatchIntention, StonePatch, TestFactor } from '../../records/testStone.ts';
import type { Intention, Zone } from '../../records/zone.ts';
import { mediumCatalogue } from '../../studio/etch/mediumCatalogue.ts';
import { patchName } from '../../studio/trials/places/patchName.ts';

const intentions: Record<PatchIntention, Intention> = {
  image: 'drawn',
  control: 'drawn',
  guide: 'guide',
  'stop-out': 'stop-out',
};

/** Patches as the zones of a comparison, which reads them. The medium is told by the factor that is called so. */
export function patchZones(patches: readonly StonePatch[], factors: readonly TestFactor[]): Zone[] {
  const factor = factors.find(({ name }) => name.trim().toLowerCase() === 'medium')?.name;
  return patches.map(({ id, row, column, intention, treatment, polygonMm }) => ({
    id,
    name: patchName({ id, row, column }),
    medium: mediumIdOf(intention, factor === undefined ? undefined : treatment[factor]),
    intention: intentions[intention],
    polygonMm,
  }));
}

/** The catalogue's id where the words are its name or id, else the words; nothing is known of those. */
function mediumIdOf(intention: PatchIntention, level: string | undefined): string {
  if (intention === 'stop-out') return 'stop-out';
  const words = level?.trim().toLowerCase() ?? '';
  if (words === '') return 'not known';
  return mediumCatalogue.find(({ id, name }) => id === words || name.toLowerCase() === words)?.id ?? words;
}
