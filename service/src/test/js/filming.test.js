import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { answered, asked, forget, module, portal, service } from './browser.js';
import { ofKit } from './samples.js';

const { film, filming } = await module('filming');
const { freshness, refresh } = await module('known');

beforeEach(forget);

/** A service that counts on films as it was told last. */
function counting(on) {
  let now = on;
  service(({ path, body }) => {
    if (path === '/api/filming') {
      now = JSON.parse(body).filming;
      return answered(200, { filming: now });
    }
    return answered(200, { left: 0, joints: [ofKit()], ...(now ? { filmedPercent: 5 } : {}) }, { etag: '"' + now + path + '"' });
  });
  return () => now;
}

test('nothing is filmed until it is said, and what is said without network is told later', async () => {
  assert.deepEqual(await filming(), { on: false, wanted: null, refused: false });
  service(portal);
  await film(true);
  await refresh();
  assert.equal(freshness.state, 'unreachable');
  assert.deepEqual({ ...(await filming()), name: undefined }, { on: false, wanted: true, refused: false, name: undefined });
  const now = counting(false);
  await refresh();
  assert.equal(now(), true);
  assert.equal((await filming()).on, true);
  assert.equal((await filming()).wanted, null);
  assert.equal(asked.filter((q) => q.path === '/api/filming').length, 1, 'told once');
});

test('what another phone said is taken over, and a change of mind leaves nothing to be told', async () => {
  counting(true);
  await refresh();
  assert.equal((await filming()).on, true);
  await film(false);
  assert.equal((await filming()).wanted, false);
  await film(true);
  assert.equal((await filming()).wanted, null);
  counting(false);
  await refresh();
  assert.equal((await filming()).on, false);
});

test('where the service will not hear it, that is said and not asked again; where it cannot now, it is told later', async () => {
  service(({ path }) => (path === '/api/filming' ? answered(503, {}) : answered(200, { left: 0, joints: [ofKit()] }, { etag: '"a"' })));
  await film(true);
  await refresh();
  assert.equal((await filming()).wanted, true);
  service(({ path }) => (path === '/api/filming' ? answered(403, {}) : answered(200, { left: 0, joints: [ofKit()] }, { etag: '"b"' })));
  await refresh();
  const { on, wanted, refused } = await filming();
  assert.deepEqual({ on, wanted, refused }, { on: false, wanted: null, refused: true });
});
