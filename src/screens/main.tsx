import { createRoot } from 'react-dom/client';
import { BEGINS_AT_LIST } from './first.ts';
import '../charts/look/fonts.css';
import '../charts/look/tokens.css';
import '../charts/look/base.css';
import '../charts/look/charts.css';
import './screens.css';
import './shared/fields.css';
import './thread/thread.css';
import './stages.css';
import { App, begin } from './app.tsx';
import { holdPage } from './hold-page.ts';
import { DESK } from './household-screen.tsx';
import { keepFocus } from './keep-focus.ts';
import { fetchListAhead } from './list/use-household-list.ts';

// All that a start shows comes at once, while the first of it is drawn. Hardly anybody stays at the list.
const list = BEGINS_AT_LIST ? fetchListAhead() : undefined;
const beginning = Promise.all([begin(), list]).then(([begun]) => begun);
void DESK.fetch();

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element named root');
keepFocus(root);
holdPage();
createRoot(root).render(<App beginning={beginning} />);
