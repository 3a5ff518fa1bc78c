// Tests wait here until the service has them. Each is written down before it is sent, carries one key for life, and is taken
// out only by an answer that names the test stored. A photo of a test waits beside it and is sent after it, and after all tests.

import { all, change, changed, get, write } from './store.js';
import { NoAnswer, PATIENCE_OF_A_PHOTO, ask } from './api.js';
import { freshness, learned } from './known.js';

const LOCK = 'sunder-outbox';
const LEASE = 30000; // ms; longer than a test may take, and a photo that two tabs send is kept once
const FIRST_WAIT = 2000;
const LONGEST_WAIT = 60000;
const KEPT = 40; // stored tests that stay listed

let draining = false;
let again = false;
let timer = 0;
let wait = FIRST_WAIT;

const PHOTO = 'photo-of-';

/** Which entry is on its way, or the photo of which, and what stopped the last round. */
export const progress = { sending: null, trouble: null };

/** Every entry, oldest first. */
export async function entries() {
  return (await all('outbox')).sort((a, b) => a.order - b.order);
}

/** A key that nobody else makes; works without a secure context. */
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return 'field-' + Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('');
}

/**
 * Writes a test down and clears its form, in one transaction.
 *
 * @param entry the test
 * @param corrects key of the refused entry that it replaces, or null
 */
export async function save(entry, corrects) {
  await write(['outbox', 'drafts', 'photos'], ([outbox, drafts, photos]) => {
    outbox.put(entry);
    if (corrects) {
      handOver(corrects, entry, outbox, photos);
      outbox.delete(corrects);
    }
    drafts.delete(entry.jointId);
  });
  changed();
}

/** The photo of a test that is corrected goes to the one in its place. */
function handOver(from, entry, outbox, photos) {
  const told = outbox.get(from);
  told.onsuccess = () => {
    if (told.result && told.result.photo) outbox.put({ ...entry, photo: told.result.photo });
  };
  const read = photos.get(from);
  read.onsuccess = () => {
    if (!read.result) return;
    photos.put({ ...read.result, key: entry.key });
    photos.delete(from);
  };
}

/** Takes an entry out; only one that the service cannot have. */
export async function drop(key) {
  await write(['outbox', 'photos'], ([outbox, photos]) => {
    const read = outbox.get(key);
    read.onsuccess = () => {
      const entry = read.result;
      if (!entry || !(entry.state === 'refused' || (entry.state === 'waiting' && entry.attempts === 0))) return;
      outbox.delete(key);
      photos.delete(key);
    };
  });
  changed();
}

/**
 * Writes the photo of a test down, in one transaction.
 *
 * @param key of the test
 * @param photo its bytes and their type
 */
export async function addPhoto(key, { bytes, type }) {
  await write(['outbox', 'photos'], ([outbox, photos]) => {
    const read = outbox.get(key);
    read.onsuccess = () => {
      if (!read.result) return;
      photos.put({ key, bytes, type });
      outbox.put({ ...read.result, photo: { state: 'waiting' } });
    };
  });
  changed();
}

/** Takes the photo of a test out of this phone; only one that the service cannot have. */
export async function dropPhoto(key) {
  await write(['outbox', 'photos'], ([outbox, photos]) => {
    const read = outbox.get(key);
    read.onsuccess = () => {
      const entry = read.result;
      if (!entry || !droppable(entry)) return;
      outbox.put({ ...entry, photo: null });
      photos.delete(key);
    };
  });
  changed();
}

/** Takes a slip back: out of this phone where it was never sent, else by a void with its reason. */
export async function undo(key, reason) {
  const entry = await get('outbox', key);
  if (entry.state === 'waiting' && entry.attempts === 0 && progress.sending !== key) {
    await drop(key);
    if (!(await get('outbox', key))) return 'removed';
  }
  await change('outbox', key, (e) => e && { ...e, undo: { reason, state: 'waiting' } });
  changed();
  return 'void';
}

/** Takes back a test that this phone did not log: its void is written down here and sent as everything else is. */
export async function takeBackElsewhere(test, joint, reason) {
  await write(['outbox'], ([outbox]) => outbox.put({
    key: 'void-' + test.id, elsewhere: true, testId: test.id, jointId: joint.id, title: joint.airframe + ', ' + joint.name, order: Date.now(), body: null,
    state: 'stored', attempts: 0, undo: { reason, state: 'waiting' },
  }));
  changed();
  return 'void';
}

/** Whether something of a test, but its photo, has not reached the service. */
export function unsent(entry) {
  return entry.state === 'waiting' || entry.state === 'refused' || Boolean(entry.undo && entry.undo.state === 'waiting');
}

/** Whether the photo of a test is on its way. */
export const sendingPhoto = (entry) => progress.sending === PHOTO + entry.key;

/** Whether the photo of a test has not reached the service. */
export function unsentPhoto(entry) {
  return Boolean(entry.photo && entry.photo.state !== 'stored');
}

function due(entry) {
  return entry.state === 'waiting' || (entry.state === 'stored' && entry.undo && entry.undo.state === 'waiting');
}

/** Whether the service cannot have the photo of a test: it refused it, or has not even the test. */
export const droppable = (entry) => Boolean(entry.photo) && (entry.photo.state === 'refused' || (entry.photo.state === 'waiting' && entry.state !== 'stored'));

function photoDue(entry) {
  return entry.state === 'stored' && Boolean(entry.photo && entry.photo.state === 'waiting');
}

/** Sends what waits. Safe to call at any time, from any tab: one round runs at a time. */
export async function drain() {
  if (draining) {
    again = true;
    return;
  }
  draining = true;
  clearTimeout(timer);
  try {
    do {
      again = false;
      await alone(round);
    } while (again);
  } catch (failure) {
    progress.trouble = 'This phone could not read what it keeps: ' + failure.message;
    later(0);
  } finally {
    draining = false;
    progress.sending = null;
    changed();
  }
}

/** Forgets the growing waits and sends at once. */
export function drainNow() {
  wait = FIRST_WAIT;
  return drain();
}

async function round(stillMine) {
  const seen = new Set();
  const seenPhotos = new Set();
  for (;;) {
    const known = await entries();
    const test = known.find((e) => due(e) && !seen.has(e.key));
    const next = test || known.find((e) => photoDue(e) && !seenPhotos.has(e.key)); // no test waits for a photo
    if (!next) break;
    (test ? seen : seenPhotos).add(next.key);
    if (!(await stillMine())) return later(0);
    progress.sending = (test ? '' : PHOTO) + next.key;
    changed();
    const stop = await (test ? send(next) : sendPhoto(next));
    progress.sending = null;
    changed();
    if (stop) return later(stop.wait);
    wait = FIRST_WAIT;
  }
  progress.trouble = null;
  await prune();
}

function later(seconds) {
  clearTimeout(timer);
  timer = setTimeout(drain, Math.max(wait, seconds * 1000));
  wait = Math.min(LONGEST_WAIT, wait * 2);
}

/** Sends one entry; something to stop for, or nothing. */
async function send(entry) {
  try {
    if (entry.state === 'waiting') {
      // Written down first: an entry that may have left this phone is never just removed.
      await change('outbox', entry.key, (e) => e && { ...e, attempts: e.attempts + 1 });
      const answer = await ask('POST', '/api/joints/' + entry.jointId + (entry.occasion === 'flight' ? '/flight-events' : '/ground-tests'), entry.body, { 'Idempotency-Key': entry.key });
      const stop = await logged(entry, answer);
      if (stop) return stop;
    }
    const now = await get('outbox', entry.key);
    return now && due(now) && now.state === 'stored' ? await takeBack(now) : null;
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    return stopped('The service cannot be reached; it is tried again by itself.', 0);
  }
}

/** Sends the photo of a test; sent twice, the service keeps it once. Answers as send. */
async function sendPhoto(entry) {
  const photo = await get('photos', entry.key);
  if (!photo) return photoStands(entry, { state: 'refused', detail: 'This phone does not have it any more.' });
  try {
    const answer = await ask('PUT', '/api/ground-tests/' + entry.testId + '/photo', photo.bytes, { 'content-type': photo.type }, PATIENCE_OF_A_PHOTO);
    if (answer.ok) {
      if (!answer.body || answer.body.testId !== entry.testId) throw new NoAnswer('the answer names no photo');
      return photoStands(entry, { state: 'stored' });
    }
    const stop = verdict(answer);
    if (stop) return stop;
    return photoStands(entry, { state: 'refused', detail: answer.status === 428 ? 'The test has another photo already.' : answer.body.detail || answer.body.title });
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    return stopped('The service cannot be reached; it is tried again by itself.', 0);
  }
}

/** Notes where a photo stands; the bytes of one that the service has are let go. */
async function photoStands(entry, photo) {
  await write(['outbox', 'photos'], ([outbox, photos]) => {
    const read = outbox.get(entry.key);
    read.onsuccess = () => {
      if (!read.result) return;
      outbox.put({ ...read.result, photo });
      if (photo.state === 'stored') photos.delete(entry.key);
    };
  });
  return null;
}

function stopped(trouble, seconds) {
  progress.trouble = trouble;
  return { wait: seconds };
}

/** What an answer that is no success means: try again later, or refused. */
function verdict(answer) {
  if (answer.status === 401) {
    freshness.state = 'signed-out';
    return stopped('Sign in again, then the tests are sent.', 0);
  }
  const busy = answer.status === 409 && String(answer.body.type).endsWith('request-in-flight');
  const passing = answer.status >= 500 || [408, 425, 429].includes(answer.status) || busy;
  return passing ? stopped('The service is busy; it is tried again by itself.', answer.wait) : null;
}

async function logged(entry, answer) {
  if (answer.ok) {
    const test = answer.body && answer.body.test;
    if (freshness.state === 'signed-out') freshness.state = 'fresh';
    if (!test || test.jointId !== entry.jointId || !test.id) throw new NoAnswer('the answer names no test');
    await change('outbox', entry.key, (e) => e && {
      ...e, state: 'stored', testId: test.id, storedAt: new Date().toISOString(), surprise: answer.body.surprise || null, tooFast: ((answer.body.test || {}).beyond || []).includes('speed'),
    });
    await learned(entry, answer.body.next);
    return null;
  }
  const stop = verdict(answer);
  if (stop) return stop;
  await change('outbox', entry.key, (e) => e && { ...e, state: 'refused', refusal: reasonOf(answer.body) });
  return null;
}

function reasonOf(problem) {
  return { title: problem.title, detail: problem.detail, errors: (problem.errors || []).map((e) => ({ pointer: e.pointer, code: e.code, detail: e.detail, allowed: e.allowed })) };
}

async function takeBack(entry) {
  const answer = await ask('POST', '/api/ground-tests/' + entry.testId + '/void', JSON.stringify({ reason: entry.undo.reason }));
  if (answer.ok) {
    await learned({ ...entry, undone: true }, answer.body.next);
  } else {
    const stop = verdict(answer);
    if (stop) return stop;
  }
  // Refused means that it is void already, perhaps by an answer that was lost.
  const state = answer.ok || answer.status === 409 ? 'done' : 'refused';
  await change('outbox', entry.key, (e) => e && { ...e, undo: { ...e.undo, state, at: new Date().toISOString(), detail: state === 'refused' ? answer.body.detail : null } });
  return null;
}

async function prune() {
  const stored = (await entries()).filter((e) => !unsent(e) && !unsentPhoto(e));
  if (stored.length > KEPT) {
    await write(['outbox'], ([outbox]) => stored.slice(0, stored.length - KEPT).forEach((e) => outbox.delete(e.key)));
  }
}

/** Runs the work in one tab at a time: by the browser's lock, or by a lease in the store where there is none. */
async function alone(work) {
  if (navigator.locks) {
    const ran = await navigator.locks.request(LOCK, { ifAvailable: true }, async (lock) => {
      if (lock) await work(async () => true);
      return Boolean(lock);
    });
    if (!ran) later(0);
    return;
  }
  const owner = newKey();
  const mine = () => lease(owner, LEASE);
  if (!(await mine())) return later(0);
  try {
    await work(mine);
  } finally {
    await lease(owner, 0);
  }
}

/** Takes, renews or, with no time, gives back the lease; false where another tab holds it. */
async function lease(owner, time) {
  let held = false;
  await write(['facts'], ([facts]) => {
    const read = facts.get('lease');
    read.onsuccess = () => {
      const now = read.result;
      held = !now || now.owner === owner || now.until <= Date.now();
      if (held) facts.put({ name: 'lease', owner, until: Date.now() + time });
    };
  });
  return held;
}

/** Sends whenever there may be a network again. The browser's word that it is online is a hint, no more. */
export function watch() {
  addEventListener('online', drainNow);
  addEventListener('pageshow', drainNow);
  document.addEventListener('visibilitychange', () => { if (!document.hidden) drainNow(); });
}
