import '@fontsource-variable/archivo/wdth.css';
import './look/tokens.css';
import './look/base.css';
import { createRoot } from 'react-dom/client';
import { App } from './screens/App.tsx';

createRoot(document.getElementById('page')!).render(<App />);
