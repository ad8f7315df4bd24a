import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { guidePages } from './src/guide/build/index.ts';

export default defineConfig({
  base: './',
  publicDir: 'src/public',
  plugins: [react(), guidePages(), policyOfBuildOnly(), installable()],
  build: { target: 'es2022', chunkSizeWarningLimit: 1200 },
  worker: { format: 'es' },
  test: {
    include: ['tests/{unit,reference,property}/**/*.test.{ts,tsx}'],
    environment: 'node',
    allowOnly: false,
    testTimeout: 180_000,
  },
});

/** A service worker that has every file of the build at hand, and what a home screen needs to know. */
function installable() {
  return VitePWA({
    injectRegister: null,
    registerType: 'prompt',
    workbox: {
      globPatterns: ['**/*'],
      globIgnores: ['**/*.map', 'old-pages.js'],
      importScripts: ['old-pages.js'],
      maximumFileSizeToCacheInBytes: 16 * 1024 * 1024,
      clientsClaim: true,
      cleanupOutdatedCaches: true,
      navigateFallback: 'index.html',
    },
    manifest: {
      id: './',
      start_url: './',
      scope: './',
      name: 'Nookwright',
      short_name: 'Nookwright',
      description: 'From tape readings of a bath alcove to wall panels that fit',
      lang: 'en',
      display: 'standalone',
      background_color: '#f1efe9',
      theme_color: '#f1efe9',
      icons: [
        { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
  });
}

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
