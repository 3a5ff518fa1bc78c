// Opens the field page without network. Pages and modules of one version are kept together; answers of the API never are.

const VERSION = '{{version}}';
const CACHE = 'sunder-' + VERSION;
const SHELL = '/field';
const FILES = {{files}};

self.addEventListener('install', (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(CACHE);
    for (const path of [SHELL, ...FILES]) {
      const response = await fetch(path, { cache: 'reload', credentials: 'same-origin' });
      // A portal or a sign-in page is not the field page: try again at the next visit.
      if (!response.ok || response.redirected) throw new Error('not kept: ' + path);
      await cache.put(path, response);
    }
    await self.skipWaiting();
  })());
});

self.addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith('sunder-') && name !== CACHE) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin || url.pathname.startsWith('/api/')) return;
  if (request.mode === 'navigate') event.respondWith(page(request, url));
  else if (FILES.includes(url.pathname)) event.respondWith(kept(url.pathname, request));
});

async function page(request, url) {
  if (url.pathname === SHELL || url.pathname.startsWith(SHELL + '/')) return kept(SHELL, request);
  try {
    return await fetch(request);
  } catch {
    return Response.redirect(SHELL, 302); // the only page that works without network
  }
}

async function kept(path, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(path)) || fetch(request);
}
