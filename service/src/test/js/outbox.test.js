import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { answered, asked, forget, module, portal, service, timers } from './browser.js';
import { ofKit, report } from './samples.js';

const { addPhoto, drain, drainNow, drop, dropPhoto, entries, newKey, progress, save, takeBackElsewhere, undo, unsent, unsentPhoto } = await module('outbox');
const { get, write } = await module('store');
const { refresh } = await module('known');

beforeEach(async () => {
  await forget();
  timers.clear();
});

const next = { ...ofKit().advice };
const posts = () => asked.filter((q) => q.method === 'POST');

/** A service that keeps each test once by its key; before() may stand in for its answer. */
function keeping(before = () => null) {
  const stored = new Map();
  service(async (question) => {
    const { method, path, headers } = question;
    if (method === 'GET') return answered(200, { joints: [ofKit()], left: 0 });
    const instead = await before(question, stored);
    if (instead) return instead;
    if (path.endsWith('/void')) return answered(200, { next });
    if (method === 'PUT') return answered(201, { testId: path.split('/')[3] });
    const key = headers['Idempotency-Key'];
    if (!stored.has(key)) stored.set(key, 't' + stored.size);
    return answered(201, { test: { id: stored.get(key), jointId: 'j' }, next });
  });
  return stored;
}

async function only() {
  const all = await entries();
  assert.equal(all.length, 1);
  return all[0];
}

test('a test is written down, its form cleared, and sent as it was written', async () => {
  const stored = keeping();
  await write(['drafts'], ([drafts]) => drafts.put({ joint: 'j', charge: '0.85' }));
  const entry = report('0.850', 'none', { body: '{"charge":{"value":0.850,"unit":"g"}}' });
  await save(entry, null);
  assert.equal(await get('drafts', 'j'), undefined);
  assert.equal(unsent(await only()), true);
  await drainNow();
  assert.deepEqual(posts().map((q) => [q.path, q.body, q.headers['Idempotency-Key']]), [['/api/joints/j/ground-tests', entry.body, entry.key]]);
  assert.equal((await only()).state, 'stored');
  assert.equal((await only()).testId, stored.get(entry.key));
  assert.equal(unsent(await only()), false);
  assert.equal(progress.trouble, null);
  await refresh();
});

test('a flight goes where flights go', async () => {
  keeping();
  await save(report('0.85', 'separated', { occasion: 'flight' }), null);
  await drainNow();
  assert.equal(posts()[0].path, '/api/joints/j/flight-events');
  await refresh();
});

test('a portal or an answer that names no test acknowledges nothing; the entry waits and is tried again', async () => {
  for (const answer of [portal, () => answered(201, { test: null, next }), () => answered(201, { test: { id: 't', jointId: 'other' }, next }), () => { throw new TypeError('no network'); }]) {
    await forget();
    timers.clear();
    keeping(() => answer());
    await save(report('0.85', 'none'), null);
    await drainNow();
    assert.equal((await only()).state, 'waiting');
    assert.equal((await only()).attempts, 1);
    assert.match(progress.trouble, /cannot be reached/);
    assert.equal(timers.size, 1);
  }
});

test('an answer that was lost is asked for with the same key, and the service has the test once', async () => {
  let lost = true;
  const stored = keeping((question, kept) => {
    if (!lost) return null;
    lost = false;
    kept.set(question.headers['Idempotency-Key'], 't0');
    throw new TypeError('connection reset');
  });
  await save(report('0.85', 'none'), null);
  await drainNow();
  assert.equal((await only()).state, 'waiting');
  await drainNow();
  assert.equal((await only()).state, 'stored');
  assert.equal((await only()).testId, 't0');
  assert.equal(stored.size, 1);
  await refresh();
});

test('a refused entry keeps what was typed and why, and the rest go on', async () => {
  const problem = { title: 'Not acceptable', detail: 'd', errors: [{ pointer: '/charge', code: 'too-large', detail: 'too much', allowed: 'up to 50 g', more: 1 }] };
  keeping(({ body }) => (body.includes('77') ? answered(422, problem) : null));
  await save(report('77', 'none', { order: 1 }), null);
  await save(report('0.85', 'none', { order: 2 }), null);
  await drainNow();
  const [refused, sent] = await entries();
  assert.equal(refused.state, 'refused');
  assert.equal(refused.charge, '77');
  assert.deepEqual(refused.refusal, { title: 'Not acceptable', detail: 'd', errors: [{ pointer: '/charge', code: 'too-large', detail: 'too much', allowed: 'up to 50 g' }] });
  assert.equal(sent.state, 'stored');
  await save(report('0.77', 'none', { order: 3 }), refused.key);
  assert.equal((await entries()).some((e) => e.key === refused.key), false);
  await refresh();
});

test('what passes is tried again after the wait asked for, and stops what follows', async () => {
  for (const answer of [[503, {}], [429, {}], [500, {}], [408, {}], [425, {}], [409, { type: '/problems/request-in-flight' }], [401, undefined]]) {
    await forget();
    timers.clear();
    keeping(() => answered(...answer, { 'retry-after': '77' }));
    await save(report('0.85', 'none', { order: 1 }), null);
    await save(report('0.90', 'none', { order: 2 }), null);
    await drainNow();
    assert.deepEqual((await entries()).map((e) => [e.state, e.attempts]), [['waiting', 1], ['waiting', 0]], String(answer[0]));
    const [timer] = timers.values();
    assert.equal(timer.time, answer[0] === 401 ? 2000 : 77000);
    assert.ok(progress.trouble);
  }
});

test('waits grow, and a new reason to hope forgets them', async () => {
  keeping(portal);
  await save(report('0.85', 'none'), null);
  await drainNow();
  const waits = [];
  for (let i = 0; i < 7; i++) {
    const [timer] = timers.values();
    waits.push(timer.time);
    timers.clear();
    await drain();
  }
  assert.deepEqual(waits, [2000, 4000, 8000, 16000, 32000, 60000, 60000]);
  timers.clear();
  await drainNow();
  assert.equal([...timers.values()][0].time, 2000);
});

test('only what the service cannot have is dropped', async () => {
  const kept = [report('1', 'none', { attempts: 1 }), report('2', 'none', { state: 'stored' })];
  const gone = [report('3', 'none'), report('4', 'none', { state: 'refused', attempts: 1 })];
  for (const entry of [...kept, ...gone]) await save(entry, null);
  for (const entry of [...kept, ...gone]) await drop(entry.key);
  assert.deepEqual((await entries()).map((e) => e.key).sort(), kept.map((e) => e.key).sort());
});

test('a slip that never left is removed, one that may have left is voided with its reason', async () => {
  keeping();
  const slip = report('0.85', 'none');
  await save(slip, null);
  assert.equal(await undo(slip.key, 'slip'), 'removed');
  assert.deepEqual(await entries(), []);
  await save({ ...slip, attempts: 1 }, null);
  assert.equal(await undo(slip.key, 'slip'), 'void');
  await drainNow();
  assert.deepEqual(posts().map((q) => q.path), ['/api/joints/j/ground-tests', '/api/ground-tests/t0/void']);
  assert.deepEqual(JSON.parse(posts()[1].body), { reason: 'slip' });
  assert.equal((await only()).undo.state, 'done');
  await refresh();
});

test('taking back what is void already is done; what is refused is said', async () => {
  for (const [status, state] of [[409, 'done'], [404, 'refused']]) {
    await forget();
    keeping(({ path }) => (path.endsWith('/void') ? answered(status, { detail: 'why' }) : null));
    await save(report('0.85', 'none', { state: 'stored', testId: 't7', undo: { reason: 'r', state: 'waiting' } }), null);
    await drainNow();
    assert.equal((await only()).undo.state, state);
    assert.equal((await only()).undo.detail, state === 'refused' ? 'why' : null);
    await refresh();
  }
});

test('while another tab holds the lease nothing is sent; a lease that ran out is taken', async () => {
  keeping();
  await save(report('0.85', 'none'), null);
  await write(['facts'], ([facts]) => facts.put({ name: 'lease', owner: 'another', until: Date.now() + 30000 }));
  await drainNow();
  assert.equal(posts().length, 0);
  assert.equal(timers.size, 1);
  await write(['facts'], ([facts]) => facts.put({ name: 'lease', owner: 'another', until: Date.now() - 1 }));
  await drainNow();
  assert.equal(posts().length, 1);
  await refresh();
});

test('a lease given back is free at once', async (t) => {
  keeping();
  const now = Date.now();
  t.mock.method(Date, 'now', () => now);
  await save(report('0.85', 'none', { order: 1 }), null);
  await drainNow();
  await save(report('0.90', 'none', { order: 2 }), null);
  await drainNow();
  assert.deepEqual((await entries()).map((e) => e.state), ['stored', 'stored']);
  await refresh();
});

test('rounds asked for at once send each entry once', async () => {
  keeping();
  for (let i = 1; i <= 5; i++) await save(report('0.8' + i, 'none', { order: i }), null);
  await Promise.all([drain(), drain(), drainNow(), drain()]);
  assert.equal(posts().length, 5);
  assert.deepEqual(posts().map((q) => JSON.parse(q.body).charge.value), [0.81, 0.82, 0.83, 0.84, 0.85]);
  await refresh();
});

test('of the stored tests the newest forty stay listed, and every unsent one', async () => {
  keeping();
  await save(report('0.01', 'none', { order: 0, state: 'refused' }), null);
  for (let i = 1; i <= 45; i++) await save(report(String(i), 'none', { order: i, state: 'stored' }), null);
  await drainNow();
  const left = await entries();
  assert.equal(left.length, 41);
  assert.deepEqual([left[0].charge, left[1].charge, left[40].charge], ['0.01', '6', '45']);
});

test('keys are of 128 random bits', () => {
  const keys = new Set(Array.from({ length: 1000 }, newKey));
  assert.equal(keys.size, 1000);
  for (const key of keys) assert.match(key, /^field-[0-9a-f]{32}$/);
});

test('a test of another phone is taken back by its void alone, once, and waits where there is no network', async () => {
  let down = true;
  keeping(() => { if (down) throw new TypeError('no network'); return null; });
  const joint = { id: 'j', airframe: 'Bittern', name: 'nose to bay' };
  await takeBackElsewhere({ id: 't7' }, joint, 'the igniter failed');
  await takeBackElsewhere({ id: 't7' }, joint, 'the igniter failed');
  await drainNow();
  assert.equal(unsent(await only()), true);
  assert.match(progress.trouble, /cannot be reached/);
  down = false;
  await drainNow();
  const sent = posts().filter((q) => q.path.endsWith('/void'));
  assert.deepEqual(sent.slice(-1).map((q) => [q.path, q.body]), [['/api/ground-tests/t7/void', '{"reason":"the igniter failed"}']]);
  assert.deepEqual(posts().filter((q) => !q.path.endsWith('/void')), []);
  assert.equal((await only()).undo.state, 'done');
  assert.ok((await only()).undo.at);
  assert.equal(unsent(await only()), false);
  await refresh();
});

const picture = () => ({ bytes: Uint8Array.of(0xff, 0xd8, 1, 2, 3).buffer, type: 'image/jpeg' });
const puts = () => asked.filter((q) => q.method === 'PUT');

test('a photo is sent after its test and after all tests, as it was kept, and then its bytes are let go', async () => {
  keeping();
  const first = report('0.85', 'none', { order: 1 });
  await save(first, null);
  await addPhoto(first.key, picture());
  await save(report('0.90', 'none', { order: 2 }), null);
  assert.equal(unsentPhoto((await entries())[0]), true);
  await drainNow();
  const sent = asked.filter((q) => q.method !== 'GET').map((q) => q.method + ' ' + q.path);
  assert.deepEqual(sent, ['POST /api/joints/j/ground-tests', 'POST /api/joints/j/ground-tests', 'PUT /api/ground-tests/t0/photo']);
  assert.equal(puts()[0].headers['content-type'], 'image/jpeg');
  assert.deepEqual(new Uint8Array(puts()[0].body), new Uint8Array(picture().bytes));
  const [entry] = await entries();
  assert.deepEqual([entry.state, entry.photo, unsent(entry), unsentPhoto(entry)], ['stored', { state: 'stored' }, false, false]);
  assert.equal(await get('photos', first.key), undefined);
  await refresh();
});

test('a photo waits where there is no network, or a portal, and its test does not', async () => {
  for (const answer of [portal, () => answered(200, { testId: 'another' }), () => answered(503, {}), () => { throw new TypeError('no network'); }]) {
    await forget();
    timers.clear();
    let down = true;
    keeping(({ method }) => (down && method === 'PUT' ? answer() : null));
    const entry = report('0.85', 'none');
    await save(entry, null);
    await addPhoto(entry.key, picture());
    await drainNow();
    assert.deepEqual([(await only()).state, (await only()).photo.state], ['stored', 'waiting']);
    assert.ok(progress.trouble);
    down = false;
    await drainNow();
    assert.equal((await only()).photo.state, 'stored');
    assert.equal(progress.trouble, null);
    await refresh();
  }
});

test('a refused photo says why, keeps its test, and can be dropped or chosen anew', async () => {
  let refused = [422, { title: 'The photo cannot be taken', detail: 'The photo is broken: it ends in the middle.' }];
  keeping(({ method }) => (method === 'PUT' && refused ? answered(...refused) : null));
  const entry = report('0.85', 'none');
  await save(entry, null);
  await addPhoto(entry.key, picture());
  await drainNow();
  assert.deepEqual((await only()).photo, { state: 'refused', detail: 'The photo is broken: it ends in the middle.' });
  assert.equal((await only()).state, 'stored');
  await dropPhoto(entry.key);
  assert.equal((await only()).photo, null);
  assert.equal(await get('photos', entry.key), undefined);
  refused = [428, { title: 'x', detail: 'y' }];
  await addPhoto(entry.key, picture());
  await drainNow();
  assert.match((await only()).photo.detail, /another photo already/);
  refused = null;
  await addPhoto(entry.key, picture());
  await drainNow();
  assert.equal((await only()).photo.state, 'stored');
  await refresh();
});

test('a photo that may have been sent is not dropped; one whose test never left goes with it', async () => {
  keeping(({ method }) => (method === 'PUT' ? portal() : null));
  const entry = report('0.85', 'none');
  await save(entry, null);
  await addPhoto(entry.key, picture());
  await drainNow();
  await dropPhoto(entry.key);
  assert.equal((await only()).photo.state, 'waiting');
  await forget();
  await save(entry, null);
  await addPhoto(entry.key, picture());
  await drop(entry.key);
  assert.deepEqual(await entries(), []);
  assert.equal(await get('photos', entry.key), undefined);
  await refresh();
});

test('the photo of a test that was refused goes to the one that corrects it', async () => {
  keeping(({ body, method }) => (method === 'POST' && body.includes('99') ? answered(422, { title: 't', detail: 'd' }) : null));
  const wrong = report('99', 'none', { order: 1 });
  await save(wrong, null);
  await addPhoto(wrong.key, picture());
  await drainNow();
  assert.deepEqual([(await only()).state, (await only()).photo.state, puts().length], ['refused', 'waiting', 0]);
  await save(report('0.77', 'none', { order: 2 }), wrong.key);
  await drainNow();
  assert.deepEqual([(await only()).charge, (await only()).photo.state], ['0.77', 'stored']);
  assert.deepEqual(new Uint8Array(puts()[0].body), new Uint8Array(picture().bytes));
  assert.equal(await get('photos', wrong.key), undefined);
  await refresh();
});

test('a phone that kept its tests before there were photos keeps them', async () => {
  const opened = (version, upgrade) => new Promise((resolve, reject) => {
    const request = globalThis.indexedDB.open('elder', version);
    request.onupgradeneeded = upgrade;
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const { upgrade } = await module('store');
  const before = await opened(1, ({ target }) => ['outbox', 'joints', 'drafts', 'facts'].forEach((name) => target.result.createObjectStore(name, { keyPath: { outbox: 'key', joints: 'id', drafts: 'joint', facts: 'name' }[name] })));
  await new Promise((resolve) => { const kept = before.transaction('outbox', 'readwrite'); kept.objectStore('outbox').put(report('0.85', 'none')); kept.oncomplete = resolve; });
  before.close();
  const after = await opened(2, (event) => upgrade(event.target.result, event.oldVersion));
  assert.deepEqual([...after.objectStoreNames].sort(), ['drafts', 'facts', 'joints', 'outbox', 'photos']);
  const found = await new Promise((resolve) => { const read = after.transaction('outbox').objectStore('outbox').getAll(); read.onsuccess = () => resolve(read.result); });
  assert.equal(found[0].charge, '0.85');
  after.close();
});
