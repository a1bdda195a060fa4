import '../ui/style-policy.ts';
import '@fontsource-variable/literata/opsz.css';
import '@fontsource-variable/literata/opsz-italic.css';
import '../ui/tokens.css';
import '../ui/base.css';
import '../ui/controls.css';
import '../ui/card.css';
import '../ui/packet.css';
import './app.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { applyPreferences } from '../ui/preferences.ts';
import { App } from './app.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { keepReady } from './offline.ts';
import { start } from './start.ts';

applyPreferences();
keepReady();

const root = document.getElementById('root');
// The page of this package has it.
if (root === null) throw new Error('the page has no place for the app');

// What a killed page left behind is back in its note before any room shows it; a database that does not answer must not
// keep the page empty, as the rooms have words for that.
const PATIENCE = 2_000;
const started = start().catch(() => {});
void Promise.race([started, new Promise((resolve) => setTimeout(resolve, PATIENCE))]).then(() => {
  createRoot(root).render(
    <StrictMode>
      <ErrorBoundary>
        <App />
      </ErrorBoundary>
    </StrictMode>,
  );
});
