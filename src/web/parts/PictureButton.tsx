import type { InputHTMLAttributes } from 'react';
import type { ButtonKind } from './Button.tsx';

/** The files that are taken as photographs. */
export const pictureKinds = 'image/*,.heic,.heif,.tif,.tiff';

/** Takes one photograph; the same file can be chosen again. `children` is what the button says. */
export function PictureButton({
  kind = 'plain',
  onPicture,
  children,
  ...rest
}: {
  kind?: ButtonKind;
  onPicture: (file: File) => void;
  children: string;
} & Pick<InputHTMLAttributes<HTMLInputElement>, 'id' | 'aria-label' | 'disabled' | 'capture'>) {
  return (
    <label className={`button ${kind}`}>
      {children}
      <input
        className="unseen"
        type="file"
        accept={pictureKinds}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) onPicture(file);
          event.target.value = '';
        }}
        {...rest}
      />
    </label>
  );
}
