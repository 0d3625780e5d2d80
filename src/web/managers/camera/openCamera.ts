/** Larger than any camera: a browser then gives the nearest that it has. */
const asMuchAsThereIs = { width: { ideal: 8192 }, height: { ideal: 8192 } };

/**
 * Opens the camera at the back, or whichever there is, at its largest picture.
 * @throws what `getUserMedia` throws, see `cameraTroubleOf`
 */
export function openCamera(devices: MediaDevices): Promise<MediaStream> {
  return devices.getUserMedia({
    audio: false,
    video: { facingMode: { ideal: 'environment' }, ...asMuchAsThereIs },
  });
}

/** Lets a camera go: its light goes out. */
export function closeCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
