/*
 * Part of the service worker. A newer version that takes over drops the files of the version before from its own store,
 * and the server may have them no longer, while open pages of that version still have parts to load. So they are put
 * aside when the newer version is installed, until the one after it comes or no page is open.
 */
const versionBefore = 'nookwright-version-before';

/** What a page loads late: script, styles, solver, typefaces. Their names change with what is in them. */
const loadedLate = /\/assets\/[^/]+\.(js|css|wasm|ttf|ply)$/;

const isLoadedLate = ({ method, url }) => {
  const { origin, pathname } = new URL(url);
  return method === 'GET' && origin === self.location.origin && loadedLate.test(pathname);
};

async function putAside() {
  if (!self.registration.active) return;
  await caches.delete(versionBefore);
  const aside = await caches.open(versionBefore);
  for (const name of await caches.keys()) {
    if (!name.includes('-precache-')) continue;
    const store = await caches.open(name);
    for (const request of await store.keys()) {
      const response = isLoadedLate(request) && (await store.match(request));
      if (response) await aside.put(request, response);
    }
  }
}

async function dropUnlessOpen() {
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (pages.length === 0) await caches.delete(versionBefore);
}

// Without room for both versions the newer one matters more.
self.addEventListener('install', (event) => event.waitUntil(putAside().catch(() => caches.delete(versionBefore))));
self.addEventListener('activate', (event) => event.waitUntil(dropUnlessOpen().catch(() => undefined)));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (!isLoadedLate(request)) return;
  // A name stands for one content, so that any store will do.
  event.stopImmediatePropagation();
  event.respondWith(caches.match(request, { ignoreVary: true }).then((found) => found ?? fetch(request)));
});
