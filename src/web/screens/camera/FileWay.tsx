import { inPageWords } from '../../client/inPageWords.ts';
import type { CameraTrouble } from '../../managers/camera/cameraTrouble.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PictureButton } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
import { checklist, troubleWords } from './cameraWords.ts';

/** Without a live view: why, the checklist, and the device's own camera or a photograph that is there already. */
export function FileWay({
  trouble,
  onAgain,
  onFile,
}: {
  trouble: CameraTrouble;
  onAgain: () => void;
  onFile: (file: File) => void;
}) {
  const { title, remedy } = troubleWords[trouble];
  const hopeless = trouble === 'plain-http' || trouble === 'no-camera-here';
  return (
    <div className="camera-file-way">
      <Notice kind={hopeless ? 'aside' : 'trouble'} title={title}>
        {remedy}
      </Notice>
      <h3>{say('Before you press')}</h3>
      <ul>
        {checklist.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>
        <a href={inPageWords('/api/protocol.pdf')}>{say('The whole sheet on how to photograph (PDF)')}</a>
      </p>
      <div className="camera-acts">
        <PictureButton kind="act" capture="environment" onPicture={onFile}>
          {say('Take it with the device’s camera')}
        </PictureButton>
        <PictureButton onPicture={onFile}>{say('Choose a photograph')}</PictureButton>
        {!hopeless && <Button onClick={onAgain}>{say('Try the camera again')}</Button>}
      </div>
    </div>
  );
}
