import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { parse } from 'yaml';

export default defineConfig({
  plugins: [react(), gardenDocuments()],
  // A strict content policy allows nothing inline, so no asset may become a data: address.
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    // The engine is one piece of 600 kB, fetched after the first view.
    chunkSizeWarningLimit: 800,
  },
  worker: { format: 'es' },
  // Where `npm start` serves the API; `npm run dev` forwards there.
  server: { proxy: { '/api': 'http://127.0.0.1:4655' } },
  preview: { host: '127.0.0.1' },
});

/** Lets the page without a server hold the demo gardens, which are written in YAML. */
function gardenDocuments(): Plugin {
  return {
    name: 'garden-documents',
    load: (id) => (id.endsWith('.yaml') ? `export default ${JSON.stringify(parse(readFileSync(id, 'utf8')))}` : null),
  };
}
