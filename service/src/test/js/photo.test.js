import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { NoPhoto, kindOf, prepared, within } = await module('photo');

const JPEG = [0xff, 0xd8, 0xff, 0xe0];
const PNG = [0x89, 0x50, 0x4e, 0x47];
const file = (...bytes) => new Blob([Uint8Array.from(bytes.flat())], { type: 'text/plain' });

test('the kind is told by the bytes and by nothing else', async () => {
  assert.equal(kindOf(Uint8Array.from(JPEG).buffer), 'image/jpeg');
  assert.equal(kindOf(Uint8Array.from(PNG).buffer), 'image/png');
  for (const other of [[], [0xff], [0x47, 0x49, 0x46, 0x38], [0x89, 0x50, 0x4e]]) assert.equal(kindOf(Uint8Array.from(other).buffer), null);
  assert.equal((await prepared(file(JPEG, 1, 2))).type, 'image/jpeg');
  assert.equal((await prepared(file(PNG, 1, 2))).type, 'image/png');
  await assert.rejects(prepared(file(0x47, 0x49, 0x46, 0x38)), NoPhoto);
});

test('a picture keeps its proportion within the longest side, and is never made larger', () => {
  assert.deepEqual(within(4000, 3000, 2560), { width: 2560, height: 1920 });
  assert.deepEqual(within(3000, 4000, 2560), { width: 1920, height: 2560 });
  assert.deepEqual(within(800, 600, 2560), { width: 800, height: 600 });
  assert.deepEqual(within(10000, 1, 2560), { width: 2560, height: 1 });
});

test('where the browser cannot draw it smaller, it is kept as it is up to 5 MB, and refused beyond', async () => {
  const large = file(JPEG, new Array(2 * 1024 * 1024).fill(7));
  assert.equal((await prepared(large)).bytes.byteLength, large.size);
  await assert.rejects(prepared(file(JPEG, new Array(5 * 1024 * 1024).fill(7))), /more than 5 MB/);
});
