import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answered, asked, module, portal, service, timers } from './browser.js';

const { NoAnswer, SignedOut, ask, picture, read } = await module('api');

const typed = (status, type, body) => new Response(body, { status, headers: { 'content-type': type } });

test('an answer has its status, body, tag and the wait it asks for', async () => {
  service(() => answered(200, { a: 1 }, { etag: '"v1"' }));
  const answer = await ask('PUT', '/api/x', '{}', { 'If-Match': '"v0"' });
  assert.deepEqual({ ...answer }, { status: 200, body: { a: 1 }, wait: 0, etag: '"v1"' });
  assert.equal(answer.ok, true);
  assert.deepEqual(asked[0].headers, { accept: 'application/json, application/problem+json', 'content-type': 'application/json', 'If-Match': '"v0"' });
  service(() => answered(503, { title: 'busy' }, { 'retry-after': '9' }));
  const busy = await ask('GET', '/api/x');
  assert.deepEqual([busy.ok, busy.status, busy.wait, busy.body.title], [false, 503, 9, 'busy']);
  assert.equal('content-type' in asked[0].headers, false);
});

test('what has no body needs none', async () => {
  for (const status of [204, 304, 401]) {
    service(() => new Response(null, { status }));
    assert.deepEqual([(await ask('GET', '/api/x')).status, (await ask('GET', '/api/x')).body], [status, null]);
  }
});

test('what another would answer is no answer, whatever its body reads as', async () => {
  const others = [
    portal, () => typed(200, 'text/html', '{}'), () => typed(200, 'text/plain', '{}'), () => typed(502, 'text/html', '{}'), () => typed(500, 'application/json', '{}'),
    () => typed(200, 'application/problem+json', '{}'), () => typed(200, 'application/json', '{'), () => { throw new TypeError('no network'); },
  ];
  for (const other of others) {
    service(other);
    await assert.rejects(ask('GET', '/api/x'), NoAnswer);
  }
  assert.equal(timers.size, 0, 'no patience is left running');
});

test('a body is read, refused, or wants a sign-in', async () => {
  service(() => answered(200, { a: 1 }));
  assert.deepEqual(await read('/api/x'), { a: 1 });
  service(() => answered(404, {}));
  assert.equal(await read('/api/x'), null);
  service(() => answered(401));
  await assert.rejects(read('/api/x'), SignedOut);
});

test('a picture refused is none, and no network is no answer', async () => {
  service(() => answered(422, {}));
  assert.equal(await picture('/api/x', '{}'), null);
  service(portal);
  assert.equal(await picture('/api/x', '{}'), null);
  service(() => { throw new TypeError('no network'); });
  await assert.rejects(picture('/api/x', '{}'), NoAnswer);
});
