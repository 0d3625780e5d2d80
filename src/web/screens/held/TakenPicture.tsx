import { useQueryClient } from '@tanstack/react-query';
import { type ImgHTMLAttributes, useSyncExternalStore } from 'react';
import { previewAddress } from '../../client/photographs.ts';
import { heldIdOf } from '../../managers/held/heldName.ts';
import { BlobPicture } from './BlobPicture.tsx';
import { heldPhotographs } from './heldPhotographs.ts';

/** A photograph that was taken for something: as the server shows it, or as it is held here until it is sent. */
export function TakenPicture({
  photograph,
  widthPx,
  alt,
  ...rest
}: {
  /** Id of a kept photograph, or the name of one that is held here. */
  photograph: string;
  widthPx: number;
  alt: string;
} & ImgHTMLAttributes<HTMLImageElement>) {
  const toSend = heldPhotographs(useQueryClient());
  const { waiting } = useSyncExternalStore(toSend.listen, toSend.current);
  const id = heldIdOf(photograph);
  if (id === null) return <img {...rest} src={previewAddress(photograph, widthPx)} alt={alt} />;
  const held = waiting.find((shown) => shown.photograph.id === id);
  return held ? <BlobPicture {...rest} blob={held.photograph.blob} alt={alt} /> : <span />;
}
