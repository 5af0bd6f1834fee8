import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './app/tokens.css';
import './app/base.css';
import { App } from './app/app.tsx';
import { openStore } from './data/open-store.ts';

// The content policy forbids code from text, which zod would try: it reads this before its first schema is built.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
const root = document.getElementById('root');
if (root === null) throw new Error('The page has no root element.');
const store = await openStore();
createRoot(root).render(
  <StrictMode>
    <App store={store} />
  </StrictMode>,
);
