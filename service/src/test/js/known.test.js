import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { answered, asked, forget, module, portal, service } from './browser.js';
import { BASIS, fire, ofKit, report } from './samples.js';

const { freshness, joints, learned, refresh } = await module('known');

beforeEach(forget);

/** The kit of these joints; plans only in the answer that asks for them. */
const kit = (...found) => ({ path }) => answered(200, { left: 1, joints: path.includes('depth=0') ? found.map((one) => ({ ...one, plan: undefined })) : found },
  { etag: path.includes('depth=0') ? '"quick"' : '"whole"' });

test('the kit is asked for without plans first, and kept', async () => {
  service(kit(ofKit({ id: 'a' }), ofKit({ id: 'b' })));
  await refresh();
  assert.deepEqual(asked.map((q) => q.path), ['/api/field-kit?depth=0', '/api/field-kit?depth=4']);
  const kept = await joints();
  assert.deepEqual(kept.map((j) => j.id), ['a', 'b']);
  assert.deepEqual(kept[0].measure, { value: '0.05', unit: 'g' });
  assert.deepEqual(kept[0].tree, { first: ofKit().plan, basis: BASIS });
  assert.deepEqual(freshness, { state: 'fresh', ready: true, left: 1 });
});

test('what did not change is not sent again, and stays', async () => {
  service(kit(ofKit()));
  await refresh();
  service(({ headers }) => (headers['if-none-match'] ? answered(304) : answered(500, {})));
  await refresh();
  assert.deepEqual(asked.map((q) => q.headers['if-none-match']), ['"quick"', '"whole"']);
  assert.equal((await joints()).length, 1);
  assert.equal(freshness.state, 'fresh');
});

test('it is known when what is known of a joint changed last', async () => {
  service(kit(ofKit()));
  await refresh();
  const first = (await joints())[0].moved;
  while (new Date().toISOString() === first) { /* the clock ticks in milliseconds */ }
  await refresh();
  assert.equal((await joints())[0].moved, first);
  service(kit(ofKit({ tests: [{ id: 't' }] })));
  await refresh();
  assert.notEqual((await joints())[0].moved, first);
});

test('a plan stays as long as it rests on the same tests, and no longer', async () => {
  service(kit(ofKit()));
  await refresh();
  service(kit(ofKit({ plan: undefined })));
  await refresh();
  assert.deepEqual((await joints())[0].tree.basis, BASIS);
  service(kit(ofKit({ plan: undefined, advice: { ...ofKit().advice, basis: { ...BASIS, tests: 3 } } })));
  await refresh();
  assert.equal((await joints())[0].tree, null);
});

test('a joint that is gone is forgotten, and the one at hand is asked for first', async () => {
  service(kit(ofKit({ id: 'a' }), ofKit({ id: 'b' })));
  await refresh();
  service(kit(ofKit({ id: 'b' })));
  await refresh('b');
  assert.match(asked[0].path, /joint=b&depth=4$/);
  assert.deepEqual((await joints()).map((j) => j.id), ['b']);
});

test('a portal, a broken network and a sign-in are told apart, and nothing kept is lost', async () => {
  service(kit(ofKit()));
  await refresh();
  service(portal);
  await refresh();
  assert.equal(freshness.state, 'unreachable');
  service(() => { throw new TypeError('no network'); });
  await refresh();
  assert.equal(freshness.state, 'unreachable');
  service(() => answered(401));
  await refresh();
  assert.equal(freshness.state, 'signed-out');
  assert.equal((await joints()).length, 1);
});

test('one refresh runs at a time, and one asked for meanwhile follows it', async () => {
  service(kit(ofKit()));
  const first = refresh();
  assert.equal(refresh('j'), first);
  await first;
  assert.equal(freshness.state, 'asking');
  await refresh();
  assert.ok(asked.some((q) => q.path.includes('joint=j')));
});

test('what the service said of a stored test stands, and the plan goes on', async () => {
  service(kit(ofKit()));
  await refresh();
  const next = { ...fire(1.05), basis: { ...BASIS, tests: 3, fleetTests: 6 } };
  service(() => { throw new TypeError('no network'); });
  await learned(report('0.85', 'none'), next);
  const [known] = await joints();
  assert.deepEqual(known.advice, next);
  assert.deepEqual(known.tree, { first: fire(1.05), basis: next.basis });
  assert.equal(freshness.ready, false);
  await refresh();
});

test('an answer that was on its way when something was learned is asked for anew', async () => {
  service(kit(ofKit()));
  await refresh();
  const next = { ...fire(1.05), basis: { ...BASIS, tests: 3, fleetTests: 6 } };
  let told = false;
  service(async (question) => {
    if (!told) {
      told = true;
      await learned(report('0.85', 'none'), next);
      return kit(ofKit())(question);
    }
    return kit(ofKit({ advice: next, plan: fire(1.05) }))(question);
  });
  await refresh();
  assert.deepEqual((await joints())[0].advice, next);
  assert.equal(asked.filter((q) => q.path.endsWith('?depth=0')).length >= 2, true);
  await refresh();
});
