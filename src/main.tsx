import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { browserKeep, firstDemo, openSession, solveInWorker } from './job';
import { App } from './views';

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element with the id root');

const session = await openSession({ solve: solveInWorker(), keep: browserKeep(), first: firstDemo });
createRoot(root).render(
  <StrictMode>
    <App session={session} />
  </StrictMode>,
);
