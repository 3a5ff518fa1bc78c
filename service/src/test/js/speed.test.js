import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { filmed, thrown } = await module('speed');

test('frames of a film give a speed in the units of the airframe', () => {
  assert.equal(filmed(300, 6, 240, false), '12'); // 0.300 m in 6/240 s
  assert.equal(filmed(12, 6, 240, true), '40'); // 1 ft in 6/240 s
  assert.equal(filmed(300, 0, 240, false), null);
  assert.equal(filmed(NaN, 6, 240, false), null);
});

// Free fall from 4.903325 m lasts one second: h = g t² / 2 with standard gravity.
test('where a part landed gives a speed, falling freely', () => {
  assert.equal(thrown(7, 9.80665 / 2, false), '7');
  assert.equal(thrown(20, (9.80665 / 0.3048) / 2, true), '20');
  assert.equal(thrown(6, 1.2, false), '12.1'); // 6 m in 0.4947 s
  assert.equal(thrown(6, 0, false), null);
  assert.equal(thrown(-6, 1.2, false), null);
});
