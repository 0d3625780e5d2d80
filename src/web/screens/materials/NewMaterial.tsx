import '../entries/Entries.css';
import { useQueryClient } from '@tanstack/react-query';
import { Link, useLocation } from 'wouter';
import type { Material } from '../../../records/material.ts';
import { addMaterial, materialKey, materialsKey } from '../../client/materials.ts';
import {
  type MaterialTyped,
  materialFieldWords,
  materialOfTyped,
  materialTroubles,
  materialTyped,
} from '../../managers/room/materialForm.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { MaterialFields } from './MaterialFields.tsx';

/** Enters a material, with its safety data sheet in hand. */
export default function NewMaterial() {
  const [, go] = useLocation();
  const queries = useQueryClient();
  const form = useTypedForm<Material, MaterialTyped>({
    entry: null,
    shelf: say('new material'),
    typedOf: materialTyped,
    check: materialTroubles,
    send: (typed) => addMaterial(materialOfTyped(typed)),
  });
  const enter = async () => {
    const material = await form.save();
    if (material) {
      queries.setQueryData(materialKey(material.id), material);
      void queries.invalidateQueries({ queryKey: materialsKey });
      go('/materials');
    }
    return material;
  };
  return (
    <>
      <PageHead
        stamp={<Link href="/materials">{say('Materials and hazards')}</Link>}
        headline={say('What does its safety data sheet say?')}
      />
      <div className="entry-body">
        <SaveForm
          label={say('A new material')}
          act={say('Enter the material')}
          form={form}
          words={materialFieldWords}
          onSave={enter}
        >
          <MaterialFields form={form} />
        </SaveForm>
      </div>
    </>
  );
}
