import './CameraView.css';
import { useEffect, useRef, useState } from 'react';
import type { DeviceSenses } from '../../managers/camera/deviceSenses.ts';
import { guideBox } from '../../managers/camera/guideBox.ts';
import type { ObjectPlane } from '../../managers/camera/levelTilt.ts';
import { takeStill } from '../../managers/camera/takeStill.ts';
import { PictureButton } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
import { CameraGuide } from './CameraGuide.tsx';
import { CheckRow } from './CheckRow.tsx';
import { mendWords, takeItWords, unfeltWords } from './cameraWords.ts';
import { guideWords, type PhotographedThing } from './photographedThing.ts';
import { useLiveChecks } from './useLiveChecks.ts';
import { useShutter } from './useShutter.ts';

/** The live picture with guide, level and checks, and the shutter. It advises and never holds back. */
export function CameraView({
  stream,
  senses,
  thing,
  plane,
  onPlane,
  onShot,
  onFile,
}: {
  stream: MediaStream;
  senses: DeviceSenses | null;
  thing: PhotographedThing;
  plane: ObjectPlane;
  onPlane: (plane: ObjectPlane) => void;
  /** `tiltDegrees` as felt when it was taken; null: not felt. */
  onShot: (file: File, tiltDegrees: number | null) => void;
  onFile: (file: File) => void;
}) {
  const video = useRef<HTMLVideoElement>(null);
  const [viewPx, setViewPx] = useState<readonly [number, number] | null>(null);
  const [taking, setTaking] = useState(false);
  const [failed, setFailed] = useState(false);
  const { reading, first, senses: felt } = useLiveChecks(video, senses, thing.sizeMm, plane);
  useEffect(() => {
    const shown = video.current;
    if (!shown) return;
    shown.srcObject = stream;
    void shown.play().catch(() => {});
    return () => {
      shown.srcObject = null;
    };
  }, [stream]);
  const take = async () => {
    if (!video.current || taking) return;
    setTaking(true);
    setFailed(false);
    try {
      onShot(await takeStill(video.current), reading?.tilt?.degrees ?? null);
    } catch {
      setFailed(true);
    } finally {
      setTaking(false);
    }
  };
  const shutter = useShutter(viewPx !== null && !taking, () => void take());
  const guide = viewPx && guideBox(viewPx, thing.sizeMm);
  const aspect = viewPx ? viewPx[0] / viewPx[1] : 3 / 4;
  const advice = failed
    ? say('The camera gave no picture: take it once more.')
    : !reading
      ? say('Opening the camera …')
      : first !== null
        ? mendWords[first]
        : reading.tilt
          ? takeItWords.felt
          : takeItWords.unfelt;
  return (
    <>
      <div className="camera-bed">
        <div
          className="camera-picture"
          style={{ aspectRatio: aspect, width: `min(100cqw, ${100 * aspect}cqh)` }}
        >
          <video
            ref={video}
            muted
            playsInline
            aria-label={say('What the camera sees')}
            onResize={(event) => setViewPx([event.currentTarget.videoWidth, event.currentTarget.videoHeight])}
            onLoadedMetadata={(event) =>
              setViewPx([event.currentTarget.videoWidth, event.currentTarget.videoHeight])
            }
          />
          {guide && <CameraGuide guide={guide} aspect={aspect} reading={reading} />}
          {shutter.countdown !== null && <p className="camera-countdown big">{shutter.countdown}</p>}
        </div>
      </div>
      <div className="camera-side">
        <p className={`camera-advice live big${reading && first === null ? ' good' : ''}`} role="status">
          {advice}
        </p>
        {reading && <CheckRow reading={reading} senses={felt} />}
        {felt !== 'felt' && felt !== 'waiting' && (
          <p className="camera-note">
            {unfeltWords[felt]}{' '}
            {felt === 'press-needed' && (
              <button type="button" className="camera-plain" onClick={() => void senses?.ask()}>
                {say('Switch the level on')}
              </button>
            )}
          </p>
        )}
        <button type="button" className="camera-shutter" disabled={taking || !viewPx} onClick={shutter.press}>
          {taking ? say('Taking it …') : shutter.countdown !== null ? say('Call it off') : say('Take it')}
        </button>
        <div className="camera-choices">
          <button type="button" aria-pressed={shutter.timer} onClick={() => shutter.setTimer(!shutter.timer)}>
            {say('After 2 s')}
          </button>
          <button type="button" aria-pressed={plane === 'lying'} onClick={() => onPlane('lying')}>
            {say('It lies flat')}
          </button>
          <button type="button" aria-pressed={plane === 'upright'} onClick={() => onPlane('upright')}>
            {say('It stands upright')}
          </button>
        </div>
        <p className="camera-note">
          {guide && <span>{guideWords(thing, guide.turned)}</span>}{' '}
          {plane === 'upright' && (
            <span>{say('A swing to the side is not felt: keep its edges along the frame’s.')}</span>
          )}{' '}
          <span className="with-keys">
            {say('The space key takes it too, as does a remote’s volume key.')}
          </span>
        </p>
        <div className="camera-else">
          <PictureButton kind="quiet" onPicture={onFile}>
            {say('Choose a photograph instead')}
          </PictureButton>
        </div>
      </div>
    </>
  );
}
