import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { split } = await module('typed');

const LENGTHS = ['mm', 'cm', 'm', 'in', 'ft'];

test('a number alone leaves the unit to its field', () => {
  assert.deepEqual(split('98', LENGTHS), { value: '98', unit: undefined });
  assert.deepEqual(split(' 1,5 ', LENGTHS), { value: '1.5', unit: undefined });
  assert.deepEqual(split('.5', LENGTHS), { value: '0.5', unit: undefined });
  assert.deepEqual(split('5.', LENGTHS), { value: '5', unit: undefined });
});

test('a unit may follow, close by or apart, in its usual spellings', () => {
  for (const [typed, unit] of [['98mm', 'mm'], ['98 MM', 'mm'], ['4in', 'in'], ['4"', 'in'], ['4”', 'in'], ['4 inches', 'in'], ["4'", 'ft'], ['4 Feet', 'ft']]) {
    assert.equal(split(typed, LENGTHS).unit, unit, typed);
  }
  assert.equal(split('2 cu in', ['mL', 'in3']).unit, 'in3');
  assert.equal(split('2 ml', ['mL', 'in3']).unit, 'mL');
  assert.equal(split('20 n', ['N', 'lbf']).unit, 'N');
});

test('fractions are taken, mixed too', () => {
  assert.deepEqual(split('3/4', LENGTHS), { value: '0.75', unit: undefined });
  assert.deepEqual(split('3 7/8 in', LENGTHS), { value: '3.875', unit: 'in' });
  assert.deepEqual(split('3-7/8"', LENGTHS), { value: '3.875', unit: 'in' });
  assert.deepEqual(split('1/3', LENGTHS), { value: '0.333333', unit: undefined });
});

test('what is no quantity of the units is none', () => {
  for (const typed of ['', 'mm', '98 kg', '98 mm mm', '1/0', '-3', '1e3', '1234567', '3 7', 'constructor', '4 constructor']) {
    assert.equal(split(typed, LENGTHS), null, typed);
  }
});
