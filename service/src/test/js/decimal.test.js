import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { brief, compare, digits, near, never, parse, shown, step } = await module('decimal');

test('numbers are taken as people type them and keep their digits', () => {
  const cases = [['1.5', '1.5'], ['1,5', '1.5'], [' 0.850 ', '0.850'], ['.5', '0.5'], ['5.', '5'], ['007', '7'], ['0', '0'], ['000.10', '0.10'], [12, '12'], ['999999.999999', '999999.999999']];
  for (const [typed, value] of cases) assert.equal(parse(typed), value, String(typed));
});

test('what is no number of at most six digits on each side is none', () => {
  for (const typed of ['', ' ', '.', 'one', '-1', '+1', '1e3', '1.2.3', '1,000.5', '1234567', '1.1234567', '1 5', '٣', 'NaN', 'Infinity', null, undefined]) {
    assert.equal(parse(typed), null, String(typed));
  }
});

test('numbers compare by value, not by digits, beyond what a double tells apart', () => {
  assert.equal(compare('0.85', '0.850'), 0);
  assert.equal(compare('0.1', '0.09'), 1);
  assert.equal(compare('9', '10'), -1);
  assert.equal(compare('9007199254740993', '9007199254740992'), 1);
  assert.equal(digits('0.850'), 3);
  assert.equal(digits('7'), 0);
});

test('a step goes to the next mark of the measure and never below one step', () => {
  assert.equal(step('0.85', '0.05', 1), '0.90');
  assert.equal(step('0.85', '0.05', -1), '0.80');
  assert.equal(step('0.86', '0.05', 1), '0.90');
  assert.equal(step('0.86', '0.05', -1), '0.85');
  assert.equal(step('0.05', '0.05', -1), '0.05');
  assert.equal(step('0', '0.05', -1), '0.05');
  assert.equal(step('3', '1', 1), '4');
  assert.equal(step('1', '0.25', 1), '1.25');
});

test('a number of the service is shown with the digits of the measure, at least', () => {
  assert.equal(shown(0.8, '0.05'), '0.80');
  assert.equal(shown('0.853', '0.05'), '0.853');
  assert.equal(shown(2, '1'), '2');
  assert.equal(shown(-1, '0.05'), '-1');
});

test('a charge between the marks is rounded to their digits, halves to even', () => {
  assert.equal(near(0.853, '0.05'), '0.85');
  assert.equal(near(0.856, '0.05'), '0.86');
  assert.equal(near('0.845', '0.05'), '0.84');
  assert.equal(near('0.855', '0.05'), '0.86');
  assert.equal(near('0.8', '0.05'), '0.80');
  assert.equal(near('1.5', '1'), '2');
  assert.equal(near('2.5', '1'), '2');
});

test('a limit is never rounded up', () => {
  assert.equal(never('0.859999', '0.05'), '0.85');
  assert.equal(never(0.85, '0.05'), '0.85');
  assert.equal(never('1.999', '1'), '1');
  for (let i = 0; i < 2000; i++) {
    const value = (i * 0.000777 + 0.01).toFixed(6);
    for (const measure of ['1', '0.1', '0.05']) assert.ok(compare(never(value, measure), value) <= 0, value);
  }
});

test('what is computed is shown with three digits', () => {
  assert.equal(brief(123.456), '123');
  assert.equal(brief(0.0012345), '0.00123');
  assert.equal(brief(98), '98');
  assert.equal(brief(12345), '12300');
  assert.equal(brief('1.50'), '1.50');
  assert.equal(brief(-4.5678), '-4.57');
});
