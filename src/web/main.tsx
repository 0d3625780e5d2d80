import '@fontsource-variable/archivo/wdth.css';
import './look/tokens.css';
import './look/base.css';
import './look/marks.css';
import { createRoot } from 'react-dom/client';
import { keepScreens } from './keepScreens.ts';
import { openWords } from './words/openWords.ts';

// Words first: tables of words in the screens' modules are written as soon as those are loaded.
await openWords();
const { App } = await import('./screens/App.tsx');
createRoot(document.getElementById('page')!).render(<App />);
keepScreens();
