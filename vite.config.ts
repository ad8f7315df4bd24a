import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  base: './',
  plugins: [react(), policyOfBuildOnly()],
  build: { target: 'es2022', chunkSizeWarningLimit: 1200 },
  worker: { format: 'es' },
  test: {
    include: ['tests/{unit,reference,property}/**/*.test.{ts,tsx}'],
    environment: 'node',
    allowOnly: false,
    testTimeout: 180_000,
  },
});

/** While developing, the page carries inline scripts that the content security policy of index.html forbids. */
function policyOfBuildOnly(): Plugin {
  return {
    name: 'policy-of-build-only',
    apply: 'serve',
    transformIndexHtml: {
      order: 'pre',
      handler: (html, { server }) =>
        server ? html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, '') : html,
    },
  };
}
