import assert from 'node:assert/strict';
import { test } from 'node:test';

import { contentsOf } from '../../main/resources/static/assets/contents.js';

const bore = { value: 92, unit: 'mm' };

test('cloth fills the bore, and how long it is stays to be typed', () => {
  const mass = { value: 340, unit: 'g' };
  const [chute] = contentsOf({ innerDiameter: bore, contents: [{ name: 'main', kind: 'fabric', material: 'nylon', mass }] });
  assert.deepEqual(chute, { name: 'main', place: 'joint', kind: 'soft', diameter: bore, volume: undefined, material: 'nylon', mass });
});

test('what is hard keeps its size', () => {
  const length = { value: 60, unit: 'mm' };
  const diameter = { value: 40, unit: 'mm' };
  const [tracker] = contentsOf({ innerDiameter: bore, contents: [{ name: 'tracker', kind: 'solid', length, diameter }] });
  assert.deepEqual(tracker, { name: 'tracker', place: 'joint', kind: 'hard', length, diameter, volume: undefined });
});

test('what is pushed in at the joint stays that of the setup', () => {
  const bay = { name: 'bay', kind: 'intrusion', depth: { value: 45, unit: 'mm' }, diameter: bore };
  assert.deepEqual(contentsOf({ innerDiameter: bore, contents: [bay] }), []);
});
