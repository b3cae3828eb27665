import { createRoot } from 'react-dom/client';
import { config } from 'zod';
import '../charts/look/fonts.css';
import '../charts/look/tokens.css';
import '../charts/look/base.css';
import '../charts/look/charts.css';
import './screens.css';
import './shared/fields.css';
import './thread/thread.css';
import './stages.css';
import { App } from './app.tsx';
import { keepFocus } from './keep-focus.ts';

// Under the content security policy nothing may build functions from text, so schemas are walked instead.
config({ jitless: true });

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element named root');
keepFocus(root);
createRoot(root).render(<App />);
