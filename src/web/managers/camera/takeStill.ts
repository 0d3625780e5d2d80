/** How long a camera's own still may take before the live picture is taken in its stead. */
const patienceMs = 5_000;
const jpegQuality = 0.95;

/**
 * Takes the largest still there is: the camera's own where the browser can ask for one, else the live picture at its
 * full size.
 * @throws where neither gives a picture
 */
export async function takeStill(video: HTMLVideoElement): Promise<File> {
  const track = video.srcObject instanceof MediaStream ? video.srcObject.getVideoTracks()[0] : undefined;
  const own = track && 'ImageCapture' in window ? await ownStill(track).catch(() => null) : null;
  const picture = own ?? (await livePicture(video));
  const ending = picture.type === 'image/png' ? 'png' : 'jpg';
  return new File([picture], `camera-${fileMoment(new Date())}.${ending}`, { type: picture.type });
}

async function ownStill(track: MediaStreamTrack): Promise<Blob | null> {
  const capture = new ImageCapture(track);
  const can = await capture.getPhotoCapabilities();
  const most = (range: MediaSettingsRange | undefined) => (range?.max ? range.max : undefined);
  const [imageWidth, imageHeight] = [most(can.imageWidth), most(can.imageHeight)];
  const taken = capture.takePhoto({
    ...(imageWidth !== undefined && { imageWidth }),
    ...(imageHeight !== undefined && { imageHeight }),
    // A flash shines back from ink and gum.
    ...(can.fillLightMode?.includes('off') && { fillLightMode: 'off' as const }),
  });
  const late = new Promise<null>((resolve) => setTimeout(() => resolve(null), patienceMs));
  const picture = await Promise.race([taken, late]);
  return picture && picture.size > 0 && /^image\/(jpeg|png)$/.test(picture.type) ? picture : null;
}

function livePicture(video: HTMLVideoElement): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  canvas.getContext('2d')?.drawImage(video, 0, 0);
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('the camera gave no picture'))),
      'image/jpeg',
      jpegQuality,
    ),
  );
}

function fileMoment(at: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day}-${two(at.getHours())}.${two(at.getMinutes())}.${two(at.getSeconds())}`;
}
