import { useRef, useState } from 'react';
import { askFile } from '../../client/askFile.ts';
import { reportFile } from '../../client/reports.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button, type ButtonKind } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Waiting } from '../../parts/Waiting.tsx';
import { say } from '../../words/say.ts';

type Form = Parameters<typeof reportFile>[1];

/** What is handed out most leads. */
const forms: readonly (readonly [Form, string, ButtonKind])[] = [
  ['pdf', say('The report as PDF'), 'plain'],
  ['docx', say('To edit (DOCX)'), 'quiet'],
  ['html', say('As one page (HTML)'), 'quiet'],
];

/** A report as a file to hand out: setting it takes a while, is said to, and can be stopped. */
export function ReportFiles({ id, title }: { id: string; title: string }) {
  const [setting, setSetting] = useState<Form | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const asked = useRef<AbortController | null>(null);
  const set = async (form: Form) => {
    const asking = new AbortController();
    asked.current = asking;
    setSetting(form);
    setTrouble(null);
    try {
      handOver(await askFile(reportFile(id, form), asking.signal), `${title}.${form}`);
    } catch (thrown) {
      if (!asking.signal.aborted) setTrouble(shownFailure(thrown));
    } finally {
      if (asked.current === asking) setSetting(null);
    }
  };
  const stop = () => {
    asked.current?.abort();
    setSetting(null);
  };
  return (
    <div className="report-files">
      {setting === null ? (
        forms.map(([form, words, kind]) => (
          <Button key={form} kind={kind} onClick={() => void set(form)}>
            {words}
          </Button>
        ))
      ) : (
        <Waiting
          words={say('Setting the report as {form} …', { form: setting.toUpperCase() })}
          onStop={stop}
        />
      )}
      {trouble && <FailureNotice failure={trouble} />}
    </div>
  );
}

/** Gives a file to whoever asked for it, under its name. */
function handOver(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser has taken it by then
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
