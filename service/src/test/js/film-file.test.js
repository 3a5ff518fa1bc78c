import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { toldBy } = await module('film-file');

// Boxes by hand, as ISO/IEC 14496-12 describes them: size, type, content.

const bytes = (value, count) => Uint8Array.from({ length: count }, (_, i) => Math.floor(value / 256 ** (count - 1 - i)) % 256);
const letters = (text) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const float = (value) => {
  const data = new DataView(new ArrayBuffer(4));
  data.setFloat32(0, value);
  return new Uint8Array(data.buffer);
};
const joined = (parts) => Uint8Array.from(parts.flatMap((part) => [...part]));
const box = (type, ...parts) => {
  const content = joined(parts);
  return joined([bytes(8 + content.length, 4), typeof type === 'number' ? bytes(type, 4) : letters(type), content]);
};
const full = (type, ...parts) => box(type, bytes(0, 4), ...parts);

const mdhd = (perSecond) => full('mdhd', bytes(0, 8), bytes(perSecond, 4), bytes(0, 8));
const mdhd64 = (perSecond) => box('mdhd', bytes(0x01000000, 4), bytes(0, 16), bytes(perSecond, 4), bytes(0, 12));
const hdlr = (type) => full('hdlr', bytes(0, 4), letters(type), bytes(0, 13));
const stts = (...runs) => full('stts', bytes(runs.length, 4), ...runs.flatMap(([frames, lasts]) => [bytes(frames, 4), bytes(lasts, 4)]));
const trak = ({ type = 'vide', header = mdhd(90000), runs = [[100, 3000]], edits = [] }) => box('trak', ...edits, box('mdia', header, hdlr(type), box('minf', box('stbl', stts(...runs)))));
const elst = (rate) => box('edts', full('elst', bytes(1, 4), bytes(1000, 4), bytes(0, 4), bytes(Math.round(rate * 65536), 4)));
const items = (type, value, key = 'com.android.capture.fps') => [
  full('keys', bytes(2, 4), box('mdta', letters('com.android.version')), box('mdta', letters(key))),
  box('ilst', box(1, box('data', bytes(1, 4), bytes(0, 4), letters('14'))), box(2, box('data', bytes(type, 4), bytes(0, 4), value)))];
const meta = (...content) => box('meta', ...content);
const film = (...movie) => new Blob([box('ftyp', letters('isom'), bytes(0, 4)), box('moov', ...movie)]);
const plain = { taken: null, uneven: false };

test('what a file plays at is told by how long its frames last', async () => {
  assert.deepEqual(await toldBy(film(trak({}))), { plays: 30, ...plain });
  assert.deepEqual(await toldBy(film(trak({ runs: [[240, 375]] }))), { plays: 240, ...plain });
  assert.deepEqual(await toldBy(film(trak({ header: mdhd64(30000), runs: [[50, 1001]] }))), { plays: 30, ...plain });
  assert.deepEqual(await toldBy(film(trak({ runs: [[40, 749], [50, 750], [5, 1500], [5, 751]] }))), { plays: 120, ...plain }, 'some left out');
  assert.deepEqual(await toldBy(film(trak({ type: 'soun', runs: [[100, 1024]] }), trak({}))), { plays: 30, ...plain }, 'the sound is another track');
});

test('a slow-motion film tells what it was taken at: by its metadata, or by an edit list that plays it slower', async () => {
  for (const [type, value] of [[23, float(240)], [23, float(239.7)], [22, bytes(240, 4)], [1, letters('240.000000')]]) {
    assert.deepEqual(await toldBy(film(trak({}), meta(...items(type, value)))), { plays: 30, taken: 240, uneven: false });
  }
  assert.deepEqual(await toldBy(film(trak({}), full('meta', hdlr('mdta'), ...items(23, float(120))))), { plays: 30, taken: 120, uneven: false }, 'as MP4 writes it');
  assert.deepEqual(await toldBy(film(trak({}), meta(hdlr('mdta'), ...items(23, float(120))))), { plays: 30, taken: 120, uneven: false }, 'as QuickTime writes it');
  assert.deepEqual(await toldBy(film(trak({ runs: [[240, 375]], edits: [elst(0.125)] }))), { plays: 30, taken: 240, uneven: false });
  assert.deepEqual(await toldBy(film(trak({ edits: [elst(1)] }))), { plays: 30, ...plain });
});

test('a film of which a part is slowed is uneven', async () => {
  assert.equal((await toldBy(film(trak({ runs: [[60, 375], [90, 3000], [30, 375]] })))).uneven, true);
});

test('what makes no sense tells nothing', async () => {
  for (const value of [float(0), float(-3), float(NaN), float(1e9)]) {
    assert.equal((await toldBy(film(trak({}), meta(...items(23, value))))).taken, null);
  }
  assert.equal((await toldBy(film(trak({}), meta(...items(99, float(240)))))).taken, null);
  assert.equal((await toldBy(film(trak({}), meta(...items(23, float(240), 'another.key'))))).taken, null);
  const nothing = { plays: null, ...plain };
  assert.deepEqual(await toldBy(film(trak({ runs: [] }))), nothing);
  assert.deepEqual(await toldBy(film(trak({ header: mdhd(0) }))), nothing);
  assert.deepEqual(await toldBy(film(trak({ type: 'soun' }))), nothing);
  assert.deepEqual(await toldBy(new Blob([letters('a letter to somebody, not a film')])), nothing);
  assert.deepEqual(await toldBy(new Blob([])), nothing);
});

test('a description behind the pictures is found, boxes of 64 bit and of all that is left too', async () => {
  const long = joined([bytes(1, 4), letters('mdat'), bytes(16 + 5000, 8), new Uint8Array(5000)]);
  const movie = box('moov', trak({}));
  const last = joined([bytes(0, 4), movie.slice(4)]);
  assert.equal((await toldBy(new Blob([box('ftyp', letters('qt  ')), long, movie]))).plays, 30);
  assert.equal((await toldBy(new Blob([box('ftyp', letters('qt  ')), long, last]))).plays, 30);
});

test('a file cut off anywhere, or with any byte of another value, is read without harm', async () => {
  const whole = new Uint8Array(await film(trak({ edits: [elst(0.5)] }), meta(...items(23, float(240)))).arrayBuffer());
  for (let length = 0; length < whole.length; length++) await toldBy(new Blob([whole.slice(0, length)]));
  for (let i = 0; i < whole.length; i++) {
    for (const value of [0, 1, 0x7f, 0xff]) {
      const broken = whole.slice();
      broken[i] = value;
      await toldBy(new Blob([broken]));
    }
  }
});
