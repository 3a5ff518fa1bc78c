import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { elsewhereStands, photoWords, senderWords, waiting } = await module('kept');

const counted = { counted: true, marks: [], finding: null };
const voided = { counted: false, marks: [{ reason: 'a pin was missing' }], finding: null };
const said = (state, more) => ({ state: 'stored', key: 'void-t', undo: { state, reason: 'the igniter failed', at: '2026-05-03T10:00:00Z', ...more } });

test('a test of another phone stands as the service says', () => {
  assert.deepEqual(elsewhereStands(counted, undefined, 'now'), { counts: true, words: null });
  assert.deepEqual(elsewhereStands(voided, undefined, 'now'), { counts: false, words: 'Void: a pin was missing' });
  assert.deepEqual(elsewhereStands({ ...voided, marks: [], finding: 'as stored, it cannot be' }, undefined, 'now'), { counts: false, words: 'Void: as stored, it cannot be' });
});

test('what this phone said of it stands until the service has told of it since', () => {
  assert.deepEqual(elsewhereStands(counted, said('waiting'), '2026-05-03T09:00:00Z'), { counts: false, words: 'Taking it back is saved on this phone, not sent yet' });
  assert.deepEqual(elsewhereStands(counted, said('done'), '2026-05-03T09:59:59Z'), { counts: false, words: 'Taken back: the igniter failed' });
  assert.deepEqual(elsewhereStands(counted, said('done'), '2026-05-03T10:00:01Z'), { counts: true, words: null }, 'counted again on another phone');
  assert.deepEqual(elsewhereStands(voided, said('done'), '2026-05-03T10:00:01Z'), { counts: false, words: 'Void: a pin was missing' });
});

test('a void that was refused leaves the test counted and says why', () => {
  const stands = elsewhereStands(counted, said('refused', { detail: 'this key only logs' }), '2026-05-03T10:00:01Z');
  assert.equal(stands.counts, true);
  assert.match(stands.words, /this key only logs/);
});

test('who logged a test is said by the name of the key', () => {
  assert.equal(senderWords('phone: Wren'), 'by the phone of Wren');
  assert.equal(senderWords('club laptop'), 'with the key club laptop');
  assert.equal(senderWords(undefined), 'by another phone');
});

test('where a photo stands is said in words', () => {
  const of = (photo, more) => photoWords({ key: 'k', state: 'stored', photo, ...more });
  assert.equal(of(null), null);
  assert.equal(of(undefined), null);
  assert.equal(of({ state: 'waiting' }), 'Photo: on this phone, not sent yet');
  assert.equal(of({ state: 'stored' }), 'Photo: sent');
  assert.equal(of({ state: 'refused', detail: 'It is broken.' }), 'Photo: refused by the service. It is broken.');
});

test('what waits is counted in words', () => {
  assert.equal(waiting(1, 0), '1 test is not sent yet');
  assert.equal(waiting(0, 1), '1 photo is not sent yet');
  assert.equal(waiting(2, 1), '2 tests and 1 photo are not sent yet');
  assert.equal(waiting(0, 3), '3 photos are not sent yet');
});
