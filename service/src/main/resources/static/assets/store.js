// What this phone keeps: known joints with their plans, tests and photos not yet sent, forms half filled in.

const NAME = 'sunder';
const VERSION = 2; // 2: photos

let opened = null;

/** Brings a store to the present version; what was kept before stays. */
export function upgrade(db, from) {
  if (from < 1) {
    db.createObjectStore('joints', { keyPath: 'id' });
    db.createObjectStore('outbox', { keyPath: 'key' });
    db.createObjectStore('drafts', { keyPath: 'joint' });
    db.createObjectStore('facts', { keyPath: 'name' });
  }
  db.createObjectStore('photos', { keyPath: 'key' });
}

function open() {
  if (!opened) {
    opened = new Promise((resolve, reject) => {
      const request = indexedDB.open(NAME, VERSION);
      request.onupgradeneeded = (event) => upgrade(request.result, event.oldVersion);
      request.onsuccess = () => {
        request.result.onversionchange = () => request.result.close();
        resolve(request.result);
      };
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error('the store of this phone is held by another tab'));
    });
    opened.catch(() => { opened = null; });
  }
  return opened;
}

function result(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** One record, or undefined. */
export async function get(store, key) {
  const db = await open();
  return result(db.transaction(store).objectStore(store).get(key));
}

/** Every record of a store. */
export async function all(store) {
  const db = await open();
  return result(db.transaction(store).objectStore(store).getAll());
}

/**
 * Changes stores in one transaction. Resolves only after the browser has completed it: what is said to be saved is saved.
 *
 * @param names the stores
 * @param work gets the object stores in that order; may return a request whose result is wanted
 */
export async function write(names, work) {
  const db = await open();
  return new Promise((resolve, reject) => {
    const transaction = db.transaction(names, 'readwrite', { durability: 'strict' });
    let value;
    transaction.oncomplete = () => resolve(value);
    transaction.onerror = () => reject(transaction.error);
    transaction.onabort = () => reject(transaction.error || new Error('the change was not saved'));
    work(names.map((name) => transaction.objectStore(name)), (given) => { value = given; });
  });
}

/** Reads a record and writes what a function makes of it, in one transaction; undefined leaves it as it is. */
export function change(store, key, make) {
  return write([store], ([records], give) => {
    const read = records.get(key);
    read.onsuccess = () => {
      const made = make(read.result);
      if (made === undefined) return;
      records.put(made);
      give(made);
    };
  });
}

// Other tabs learn of changes where the browser can tell them.
const channel = 'BroadcastChannel' in self ? new BroadcastChannel('sunder') : null;
const listeners = new Set();
if (channel) channel.onmessage = () => tell();

function tell() {
  listeners.forEach((listener) => listener());
}

/** Calls the listener after changes, of this tab and of others. */
export function onChange(listener) {
  listeners.add(listener);
}

/** Says that something changed. */
export function changed() {
  tell();
  if (channel) channel.postMessage('changed');
}

/**
 * Forgets what the service told of joints, with the pages kept of them: who is signed in may be another from here on. What was
 * typed and logged here stays.
 */
export async function forget() {
  if (self.caches) {
    for (const name of await caches.keys()) if (/^sunder-.*-pages$/.test(name)) await caches.delete(name);
  }
  await write(['joints', 'facts'], ([joints, facts]) => {
    joints.clear();
    facts.delete('kit');
  });
}
