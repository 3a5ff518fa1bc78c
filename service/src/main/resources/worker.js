// Opens the field page without network. It and its modules are kept together, one version as a whole. Beside them, asked for by
// the field page, some pages of the joints that this phone knows; they go where whoever is signed in may change.

const VERSION = '{{version}}';
const CACHE = 'sunder-' + VERSION;
const SHELL = '/field';
const FILES = {{files}};

const PAGES = CACHE + '-pages';
const HISTORY = /^\/airframes\/[0-9a-f-]{36}$/;
const OF_A_CHARGE = /^\/(airframes\/[0-9a-f-]{36}\/flight-day|api\/joints\/[0-9a-f-]{36}\/ladder)$/;
const AT = 'x-kept-at';
const MOST_PAGES = 20;
const MOST_BYTES = 4000000; // of all pages together
let round = 0; // pages asked for in an earlier one are not kept any more

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
      if (name.startsWith('sunder-') && name !== CACHE && name !== PAGES) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) return;
  if (request.method === 'POST' && url.pathname === '/sign-in') event.respondWith(signedIn(request));
  if (request.method === 'POST' && url.pathname === '/sign-out') event.waitUntil(forget());
  const ofApi = url.pathname.startsWith('/api/') && !(request.mode === 'navigate' && keepable(url.pathname));
  if (request.method !== 'GET' || ofApi) return;
  if (request.mode === 'navigate') event.respondWith(page(request, url));
  else if (FILES.includes(url.pathname)) event.respondWith(kept(url.pathname, request));
});

async function page(request, url) {
  if (url.pathname === SHELL || url.pathname.startsWith(SHELL + '/')) return kept(SHELL, request);
  try {
    return await fetch(request);
  } catch {
    return withoutNetwork(url).catch(() => notKept());
  }
}

async function kept(path, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(path)) || fetch(request);
}

// --- pages of joints ---

const keepable = (path) => HISTORY.test(path) || OF_A_CHARGE.test(path);

const notKept = (why = 'not-kept') => Response.redirect(SHELL + '?' + why, 302);

self.addEventListener('message', (event) => {
  const { keep, since } = event.data || {};
  if (!keep) return;
  event.waitUntil(keepPages(keep, since).then((pages) => {
    if (pages !== null && event.source) event.source.postMessage({ pages });
  }));
});

/** A key that was taken may be another flyer's; one that was refused, or never arrived, changes nothing. */
async function signedIn(request) {
  const answer = await fetch(request);
  if (answer.type === 'opaqueredirect' || answer.redirected) await forget().catch(() => {});
  return answer;
}

/** Forgets the pages, and what the service told of the joints on them. What was saved here and waits to be sent stays. */
async function forget() {
  round++;
  await caches.delete(PAGES);
  await stored('readwrite', ['joints', 'facts'], ([joints, facts]) => {
    joints.clear();
    facts.delete('kit');
  });
}

/** Keeps pages, those as new as asked for as they are; all others go. Answers how many are as new, or null where another round began. */
async function keepPages(paths, since) {
  const mine = ++round;
  const wanted = paths.filter(keepable).slice(0, MOST_PAGES);
  const cache = await caches.open(PAGES);
  let bytes = 0;
  let fresh = 0;
  for (const path of wanted) {
    const before = await cache.match(path);
    const stands = before && before.headers.get(AT) >= since;
    const page = stands ? before : await fetched(path).catch(() => null);
    if (mine !== round) return null;
    if (!page) continue; // what was kept before stays, with its day
    bytes += (await page.clone().blob()).size;
    if (mine !== round) return null;
    if (bytes > MOST_BYTES) await cache.delete(path);
    else {
      fresh++;
      if (!stands) await cache.put(path, page);
    }
  }
  for (const known of await cache.keys()) {
    if (!wanted.includes(new URL(known.url).pathname)) await cache.delete(known);
  }
  return mine === round ? fresh : null;
}

/** A page as the service draws it now, with the time at which it was asked for. */
async function fetched(path) {
  const at = new Date().toISOString();
  const response = await fetch(path, { headers: { accept: 'text/html' }, cache: 'no-store', credentials: 'same-origin', redirect: 'error' });
  if (!response.ok || !(response.headers.get('content-type') || '').startsWith('text/html')) throw new Error('not the page: ' + path);
  const headers = new Headers(response.headers);
  headers.set(AT, at);
  headers.delete('content-encoding'); // its bytes are plain by now
  headers.delete('content-length');
  return new Response(await response.blob(), { headers });
}

/** A kept page with its day on it. One that names charges is not shown where this phone knows of something newer. */
async function withoutNetwork(url) {
  const path = url.pathname;
  if (!keepable(path) || url.search) return notKept();
  const page = await (await caches.open(PAGES)).match(path);
  const [joints, entries] = (await stored('readonly', ['joints', 'outbox'], (stores) => stores.map((store) => store.getAll()))).map((read) => read.result);
  const id = /[0-9a-f-]{36}/.exec(path)[0];
  const airframe = joints.filter((joint) => joint.id === id || joint.airframeId === id).map((joint) => joint.airframeId)[0];
  const about = joints.filter((joint) => joint.airframeId === airframe);
  if (!page || about.length === 0) return notKept();
  const at = page.headers.get(AT);
  const here = new Set(about.map((joint) => joint.id));
  const later = (time) => Boolean(time) && time > at;
  const newer = about.some((joint) => later(joint.moved))
    || entries.some((entry) => here.has(entry.jointId) && (entry.state !== 'stored' || later(entry.storedAt) || (entry.undo && (entry.undo.state !== 'done' || later(entry.undo.at)))));
  if (newer && !HISTORY.test(path)) return notKept('older');
  const day = new Date(at).toLocaleString([], { weekday: 'long', day: 'numeric', month: 'long', hour: '2-digit', minute: '2-digit' });
  const words = '<p class="notice kept" role="note"><strong>Kept on this phone: ' + day + '.</strong> The service cannot be reached now. What was logged elsewhere since is not in it'
    + (newer ? ', nor is what was saved on this phone since' : '') + '; what can be pressed here works again with a network.</p>';
  const text = await page.text();
  return new Response(text.replace(/<main\b[^>]*>/, (main) => main + words), { headers: page.headers });
}

/** Works on stores of this phone in one transaction; rejected where there are none. */
function stored(mode, names, work) {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('sunder');
    request.onupgradeneeded = () => request.transaction.abort(); // there is no store, and none is made here
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const db = request.result;
      const transaction = db.transaction(names, mode);
      const made = work(names.map((name) => transaction.objectStore(name)));
      transaction.oncomplete = () => {
        db.close();
        resolve(made);
      };
      transaction.onabort = () => {
        db.close();
        reject(transaction.error);
      };
    };
  });
}
