import { type ImgHTMLAttributes, useEffect, useState } from 'react';

/** A picture that only this device has. */
export function BlobPicture({
  blob,
  alt,
  ...rest
}: { blob: Blob; alt: string } & ImgHTMLAttributes<HTMLImageElement>) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(blob);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  return address === null ? <span /> : <img {...rest} src={address} alt={alt} />;
}
