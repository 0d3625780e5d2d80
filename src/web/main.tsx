import '@fontsource-variable/archivo/wdth.css';
import './look/tokens.css';
import './look/base.css';
import { createRoot } from 'react-dom/client';
import { keepScreens } from './keepScreens.ts';
import { App } from './screens/App.tsx';

createRoot(document.getElementById('page')!).render(<App />);
keepScreens();
