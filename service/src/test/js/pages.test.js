import assert from 'node:assert/strict';
import { test } from 'node:test';
import { forget, module } from './browser.js';

const { wanted } = await module('pages');
const store = await module('store');

const joint = (id, airframeId) => ({ id, airframeId });

test('a rocket has its history, its flight sheet and the card of each joint', () => {
  assert.deepEqual(wanted([joint('a', 'r'), joint('b', 's'), joint('c', 'r')]), [
    ['/airframes/r', '/airframes/r/flight-day', '/api/joints/a/ladder', '/api/joints/c/ladder'],
    ['/airframes/s', '/airframes/s/flight-day', '/api/joints/b/ladder'],
  ]);
});

test('no more than there is room for, the newest first, and no rocket by half', () => {
  const many = Array.from({ length: 30 }, (_, n) => joint('j' + n, 'r' + n));
  const kept = wanted(many);
  assert.equal(kept.length, 6);
  assert.equal(kept[0][0], '/airframes/r0');
  const one = Array.from({ length: 19 }, (_, n) => joint('j' + n, 'r'));
  assert.deepEqual(wanted([...one, joint('x', 's')]), [], 'what comes after a rocket that has no room is older');
});

test('whoever leaves takes the joints along, and not what waits to be sent', async () => {
  await forget();
  await store.write(['joints', 'outbox', 'facts'], ([joints, outbox, facts]) => {
    joints.put({ id: 'a' });
    outbox.put({ key: 'k', state: 'waiting' });
    facts.put({ name: 'kit', whole: '"1"' });
    facts.put({ name: 'cautions', day: 'today' });
  });
  await store.forget();
  assert.deepEqual(await store.all('joints'), []);
  assert.equal((await store.all('outbox')).length, 1);
  assert.deepEqual((await store.all('facts')).map((fact) => fact.name), ['cautions']);
});
