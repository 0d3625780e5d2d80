import '../batches/Batches.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Material } from '../../../records/material.ts';
import { hazardsTold } from '../../../studio/room/hazardWords.ts';
import {
  archiveMaterial,
  materialKey,
  materialsKey,
  openMaterial,
  saveMaterial,
} from '../../client/materials.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import {
  type MaterialTyped,
  materialFieldWords,
  materialOfTyped,
  materialTroubles,
  materialTyped,
} from '../../managers/room/materialForm.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { useSaving } from '../useSaving.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { MaterialFields } from './MaterialFields.tsx';

/** One material with what its safety data sheet says. */
export default function MaterialScreen({ id }: { id: string }) {
  const material = useQuery({ queryKey: materialKey(id), queryFn: () => openMaterial(id) });
  if (material.data) return <MaterialPage material={material.data} />;
  if (material.isPending) return <p className="unseen">Opening the material …</p>;
  return (
    <>
      <PageHead stamp="Materials and hazards" headline="This material cannot be shown" />
      <div className="batch-body">
        <FailureNotice failure={shownFailure(material.error)} />
        <ButtonLink href="/materials">To the register</ButtonLink>
      </div>
    </>
  );
}

function MaterialPage({ material }: { material: Material }) {
  const queries = useQueryClient();
  const [saved, setSaved] = useState(false);
  const archiving = useSaving<Material>();
  const [, go] = useLocation();
  const keep = (kept: Material) => {
    queries.setQueryData(materialKey(kept.id), kept);
    void queries.invalidateQueries({ queryKey: materialsKey });
  };
  const archive = async (archived: boolean) => {
    const kept = await archiving.send(() => archiveMaterial(material.id, material.version, archived), keep);
    if (kept) {
      keep(kept);
      if (archived) go('/materials');
    }
  };
  return (
    <>
      <PageHead stamp={<Link href="/materials">Materials and hazards</Link>} headline={material.name} />
      <div className="batch-body beside">
        <div className="batch-cautions">
          <Notice kind={material.hazards?.length === 0 ? 'aside' : 'caution'} title="On its sheet:">
            {hazardsTold(material)}
          </Notice>
        </div>
        {material.archived ? (
          <Button kind="act" onClick={() => void archive(false)} disabled={archiving.pending}>
            It is back in the room
          </Button>
        ) : (
          <>
            <MaterialForm
              key={saved ? material.version : 'open'}
              material={material}
              onSaved={(kept) => {
                keep(kept);
                setSaved(true);
              }}
            />
            <p role="status">{saved ? 'Saved.' : ''}</p>
            <Button kind="quiet" onClick={() => void archive(true)} disabled={archiving.pending}>
              It is no longer in the room
            </Button>
          </>
        )}
        {archiving.trouble && <FailureNotice failure={archiving.trouble} />}
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
      act="Save the material"
      form={form}
      words={materialFieldWords}
      onSave={save}
    >
      <MaterialFields form={form} />
    </SaveForm>
  );
}
