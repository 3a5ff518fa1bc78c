import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { filmed, percent, shownOnFilm, thrown, uncertaintyFault } = await module('speed');

test('frames of a film give a speed in the units of the airframe, as good as they were counted', () => {
  assert.deepEqual(filmed(300, 6, 240, false), { speed: '12', percent: '8.5' }); // 0.300 m in 6/240 s; 5 % and 0.41 of 6 frames
  assert.deepEqual(filmed(12, 6, 240, true), { speed: '40', percent: '8.5' }); // 1 ft in 6/240 s
  assert.equal(filmed(300, 0, 240, false), null);
  assert.equal(filmed(NaN, 6, 240, false), null);
});

// Free fall from 4.903325 m lasts one second: h = g t² / 2 with standard gravity.
test('where a part landed gives a speed, falling freely', () => {
  assert.deepEqual(thrown(7, 9.80665 / 2, false), { speed: '7', percent: '6.1' }); // √(5² + 2.5² + 2.5²): level to 0.035, 7 m/s against the 9.80665 m/s of the fall
  assert.equal(thrown(20, (9.80665 / 0.3048) / 2, true).speed, '20');
  assert.equal(thrown(6, 1.2, false).speed, '12.1'); // 6 m in 0.4947 s
  assert.equal(thrown(6, 0, false), null);
  assert.equal(thrown(-6, 1.2, false), null);
});

test('a speed measured on a film is put into the units of the airframe', () => {
  assert.deepEqual(shownOnFilm({ metresPerSecond: 3.048, relative: 0.0712 }, true), { speed: '10', percent: '7.1' });
  assert.deepEqual(shownOnFilm({ metresPerSecond: 9.8765, relative: 0.001 }, false), { speed: '9.88', percent: '3' });
});

test('no reading is finer than 3 percent, and one beyond 50 has no figure', () => {
  assert.equal(percent(0.001), '3');
  assert.equal(percent(0.5), '50');
  assert.equal(percent(0.51), null);
});

test('how good a speed is stands only beside a speed, and from 3 to 50', () => {
  assert.equal(uncertaintyFault('', null, false), null);
  assert.equal(uncertaintyFault('6', 6, true), null);
  assert.match(uncertaintyFault('6', 6, false), /without the speed/);
  for (const [text, number] of [['2', 2], ['51', 51], ['fine', null]]) assert.match(uncertaintyFault(text, number, true), /3 to 50/);
});
