import './Camera.css';
import { useEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { type DeviceSenses, listenToDevice } from '../../managers/camera/deviceSenses.ts';
import type { ObjectPlane } from '../../managers/camera/levelTilt.ts';
import { say } from '../../words/say.ts';
import { AgainForSigma } from './AgainForSigma.tsx';
import { CameraView } from './CameraView.tsx';
import { FileWay } from './FileWay.tsx';
import type { PhotographedThing } from './photographedThing.ts';
import { type Shot, ShotReview } from './ShotReview.tsx';
import { useCameraStream } from './useCameraStream.ts';

/** What is handed over when all is taken: the photograph, and the one set up again where it was asked for and taken. */
export type OnPhotographs = (first: File, repeat: File | null) => void;

/** Photographs one thing: live view, look at what was taken, and once more for σ where that is wanted. */
export default function CameraDialog({
  thing,
  askRepeat,
  onPhotographs,
  onLeave,
}: {
  thing: PhotographedThing;
  askRepeat: boolean;
  onPhotographs: OnPhotographs;
  onLeave: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const head = useRef<HTMLHeadingElement>(null);
  const { camera, again } = useCameraStream();
  const [senses, setSenses] = useState<DeviceSenses | null>(null);
  const [plane, setPlane] = useState<ObjectPlane>('lying');
  const [shot, setShot] = useState<Shot | null>(null);
  const [first, setFirst] = useState<File | null>(null);
  const [sharpest, setSharpest] = useState<number | null>(null);
  const [between, setBetween] = useState(false);
  useEffect(() => dialog.current?.showModal(), []);
  useEffect(() => {
    const felt = listenToDevice(window);
    setSenses(felt);
    return felt.stop;
  }, []);
  useEffect(() => {
    return () => {
      if (shot) URL.revokeObjectURL(shot.address);
    };
  }, [shot]);
  const stage = shot ? 'shot' : between ? 'between' : camera.kind;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each stage is read out from its head, and space presses no button unseen
  useEffect(() => head.current?.focus(), [stage]);
  const see = (file: File, tiltDegrees: number | null) =>
    setShot({ file, address: URL.createObjectURL(file), tiltDegrees });
  const keep = (file: File, variance: number | null) => {
    setShot(null);
    setSharpest((before) => (variance === null ? before : Math.max(before ?? 0, variance)));
    if (first) return onPhotographs(first, file);
    if (!askRepeat) return onPhotographs(file, null);
    setFirst(file);
    setBetween(true);
  };
  // What was kept stays kept, whichever way the page is left.
  const leave = () => (first ? onPhotographs(first, null) : onLeave());
  return createPortal(
    <dialog ref={dialog} className="camera" aria-labelledby="camera-head" onClose={leave}>
      <header className="camera-head">
        <h2 id="camera-head" ref={head} tabIndex={-1}>
          {first && !between
            ? say('Photograph {thing} once more', { thing: thing.name })
            : say('Photograph {thing}', { thing: thing.name })}
        </h2>
        <button type="button" className="camera-plain" onClick={() => dialog.current?.close()}>
          {say('Leave')}
        </button>
      </header>
      {shot ? (
        <ShotReview
          key={shot.address}
          shot={shot}
          thing={thing}
          sharpest={sharpest}
          onKeep={(variance) => keep(shot.file, variance)}
          onAgain={() => setShot(null)}
        />
      ) : between ? (
        <AgainForSigma onTake={() => setBetween(false)} onEnough={leave} />
      ) : camera.kind === 'live' ? (
        <CameraView
          stream={camera.stream}
          senses={senses}
          thing={thing}
          plane={plane}
          onPlane={setPlane}
          onShot={see}
          onFile={(file) => see(file, null)}
        />
      ) : camera.kind === 'trouble' ? (
        <FileWay trouble={camera.trouble} onAgain={again} onFile={(file) => see(file, null)} />
      ) : (
        <p className="camera-file-way camera-advice big" role="status">
          {say('Asking for the camera …')}
        </p>
      )}
    </dialog>,
    document.body,
  );
}
