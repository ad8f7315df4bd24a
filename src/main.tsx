import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { browserJournal, browserTabs, firstDemo, openKeep, openSession, solveInWorker } from './job';
import { App, keepAtHand } from './views';

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element with the id root');

const solve = solveInWorker();
const session = await openSession({
  solve,
  tabs: browserTabs(),
  journal: browserJournal(),
  first: firstDemo,
  ...(await openKeep()),
});
// Back to a page that the browser had put to sleep: its job may be edited elsewhere by now.
window.addEventListener('pageshow', ({ persisted }) => persisted && window.location.reload());
// The browser asks whether to leave: only where neither storage nor the note beside it took what was typed.
window.addEventListener('beforeunload', (event) => session.wouldLose() && event.preventDefault());
createRoot(root).render(
  <StrictMode>
    <App session={session} />
  </StrictMode>,
);
void keepAtHand();
void session.shelf.sweep().catch(() => undefined);
