import '../entries/Entries.css';
import { Link } from 'wouter';
import type { Material } from '../../../records/material.ts';
import { hazardsTold } from '../../../studio/room/hazardWords.ts';
import {
  materialKey,
  materialsKey,
  openMaterial,
  putMaterialBy,
  saveMaterial,
} from '../../client/materials.ts';
import {
  type MaterialTyped,
  materialFieldWords,
  materialOfTyped,
  materialTroubles,
  materialTyped,
} from '../../managers/room/materialForm.ts';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { KeptEntry } from '../entries/KeptEntry.tsx';
import { OpenEntry } from '../entries/OpenEntry.tsx';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { MaterialFields } from './MaterialFields.tsx';

/** One material with what its safety data sheet says. */
export default function MaterialScreen({ id }: { id: string }) {
  return (
    <OpenEntry
      name="material"
      list={{ href: '/materials', stamp: say('Materials and hazards'), words: say('To the register') }}
      entryKey={materialKey(id)}
      open={() => openMaterial(id)}
    >
      {(material) => <MaterialPage material={material} />}
    </OpenEntry>
  );
}

function MaterialPage({ material }: { material: Material }) {
  const keep = useKeepEntry<Material>(materialKey, materialsKey);
  return (
    <>
      <PageHead
        stamp={<Link href="/materials">{say('Materials and hazards')}</Link>}
        headline={material.name}
      />
      <div className="entry-body beside">
        <div className="entry-cautions">
          <Notice kind={material.hazards?.length === 0 ? 'aside' : 'caution'} title={say('On its sheet:')}>
            {hazardsTold(material)}
          </Notice>
        </div>
        <KeptEntry
          entry={material}
          listHref="/materials"
          words={{ out: say('It is no longer in the room'), back: say('It is back in the room') }}
          keep={keep}
          setPutBy={(putBy) => putMaterialBy(material.id, material.version, putBy)}
        >
          {(onSaved, key) => <MaterialForm key={key} material={material} onSaved={onSaved} />}
        </KeptEntry>
      </div>
    </>
  );
}

function MaterialForm({ material, onSaved }: { material: Material; onSaved: (kept: Material) => void }) {
  const form = useTypedForm<Material, MaterialTyped>({
    entry: material,
    typedOf: materialTyped,
    check: materialTroubles,
    send: (typed, entry) => saveMaterial(material.id, entry!.version, materialOfTyped(typed)),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) onSaved(kept);
    return kept;
  };
  return (
    <SaveForm
      label={material.name}
      act={say('Save the material')}
      form={form}
      words={materialFieldWords}
      onSave={save}
    >
      <MaterialFields form={form} />
    </SaveForm>
  );
}
