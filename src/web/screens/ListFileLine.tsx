import { useState } from 'react';
import { type ListFileTrouble, readListFile } from '../managers/listFile.ts';
import { FileLine } from '../parts/FileLine.tsx';

/** A list (zones, chips) taken from a JSON file; what was held stays if the new file is no good. */
export function ListFileLine<T>({
  title,
  advice,
  fields,
  held,
  onList,
}: {
  title: string;
  advice: string;
  fields: readonly string[];
  held: string | null;
  onList: (list: { fileName: string; items: readonly T[] } | null) => void;
}) {
  const [trouble, setTrouble] = useState<ListFileTrouble | null>(null);
  const take = async (file: File) => {
    const read = readListFile<T>(await file.text(), fields);
    setTrouble(read.ok ? null : read.error);
    if (read.ok) onList({ fileName: file.name, items: read.value });
  };
  return (
    <FileLine
      title={title}
      advice={advice}
      held={held}
      accept=".json,application/json"
      trouble={trouble}
      onFile={(file) => void take(file)}
      onDrop={() => onList(null)}
    />
  );
}
