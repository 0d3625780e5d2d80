import type { PanelName } from './panelParts.ts';

const more: readonly (readonly [PanelName, string])[] = [
  ['tools', 'Tools'],
  ['forgot', 'I forgot'],
  ['stages', 'Stages'],
];

/** What can be called up beside what is led through now. */
export function BenchMore({ onPanel }: { onPanel: (panel: PanelName) => void }) {
  return (
    <div className="bench-more">
      {more.map(([name, words]) => (
        <button
          key={name}
          type="button"
          className="bench-target"
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onPanel(name)}
        >
          {words} …
        </button>
      ))}
    </div>
  );
}
