import { useEffect, useState } from 'react';
import { type CameraTrouble, cameraBarred, cameraTroubleOf } from '../../managers/camera/cameraTrouble.ts';
import { closeCamera, openCamera } from '../../managers/camera/openCamera.ts';

/** The camera of this sitting. */
type CameraState =
  | { readonly kind: 'asking' }
  | { readonly kind: 'live'; readonly stream: MediaStream }
  | { readonly kind: 'trouble'; readonly trouble: CameraTrouble };

/** Opens the camera while the page that uses it is open. `again` asks for it anew. */
export function useCameraStream(): { readonly camera: CameraState; readonly again: () => void } {
  const [camera, setCamera] = useState<CameraState>({ kind: 'asking' });
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every attempt opens it anew
  useEffect(() => {
    const barred = cameraBarred(window);
    if (barred !== null) {
      setCamera({ kind: 'trouble', trouble: barred });
      return;
    }
    let wanted = true;
    let opened: MediaStream | null = null;
    setCamera({ kind: 'asking' });
    openCamera(navigator.mediaDevices).then(
      (stream) => {
        if (!wanted) return closeCamera(stream);
        opened = stream;
        setCamera({ kind: 'live', stream });
        stream.getVideoTracks()[0]?.addEventListener('ended', () => {
          if (wanted) setCamera({ kind: 'trouble', trouble: 'taken-away' });
        });
      },
      (thrown) => {
        if (wanted) setCamera({ kind: 'trouble', trouble: cameraTroubleOf(thrown) });
      },
    );
    return () => {
      wanted = false;
      if (opened) closeCamera(opened);
    };
  }, [attempt]);
  return { camera, again: () => setAttempt((count) => count + 1) };
}
