import type { Material, MaterialDraft } from '../../records/material.ts';
import type { LineStage } from '../../records/run.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const materialsKey = ['materials'] as const;
export const materialKey = (id: string) => ['material', id] as const;

/** The card at the door as a PDF. */
export const doorCardAddress = inPageWords('/api/room/door.pdf');

/** The card beside the stone for a stage, as a PDF. */
export function startCardAddress(stage: LineStage): string {
  return inPageWords(`/api/room/start.pdf?stage=${stage}`);
}

/** One page of the register, newest first. */
export interface MaterialPage {
  readonly materials: readonly Material[];
  readonly next: string | null;
}

export function listMaterials(
  query: ListQuery,
  after: string | null,
  signal?: AbortSignal,
): Promise<MaterialPage> {
  return ask(pageAddress('/api/materials', query, after), signal ? { signal } : {});
}

export function openMaterial(id: string): Promise<Material> {
  return ask(`/api/materials/${id}`);
}

export function addMaterial(material: MaterialDraft): Promise<Material> {
  return ask('/api/materials', withJson('POST', material));
}

/** Saves a material; refused with the material as it is now where somebody saved since `version`. */
export function saveMaterial(id: string, version: number, material: MaterialDraft): Promise<Material> {
  return ask(`/api/materials/${id}`, withJson('PATCH', { ...material, version }));
}

/** Takes a material out of the register, or brings it back. */
export function putMaterialBy(id: string, version: number, putBy: boolean): Promise<Material> {
  return ask(`/api/materials/${id}/put-by`, withJson('PUT', { version, putBy }));
}
