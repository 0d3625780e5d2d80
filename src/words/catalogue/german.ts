import sheets from './sheets/de.json' with { type: 'json' };
import told from './told/de.json' with { type: 'json' };

/** What is told in English from outside the screens, and what stands on sheets and charts → the same in German. */
export const germanTold: Readonly<Record<string, string>> = { ...sheets, ...told };
