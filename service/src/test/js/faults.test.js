import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { wordsOf } = await module('faults');
const { faultWords, stateWords } = await module('kept');
const { json, showFaults } = await module('forms');

test('what would be allowed is added where it says more', () => {
  assert.equal(wordsOf({ detail: 'too long', allowed: '1 to 80 characters' }), 'too long (allowed: 1 to 80 characters)');
  assert.equal(wordsOf({ detail: '1 to 80 characters', allowed: '1 to 80 characters' }), '1 to 80 characters');
  assert.equal(wordsOf({ detail: 'a name is needed', allowed: '1 to 80 characters', code: 'missing' }), 'a name is needed');
  assert.equal(wordsOf({ detail: 'it cannot be' }), 'it cannot be');
});

test('a fault of a kept test names the field beside which it stands', () => {
  assert.equal(faultWords({ pointer: '/charge/value', detail: 'too much', allowed: 'up to 50 g' }), 'Charge loaded: too much (allowed: up to 50 g)');
  assert.equal(faultWords({ pointer: '/elsewhere', detail: 'too much' }), 'too much');
  assert.match(faultWords({ pointer: '/firedAt', code: 'in-the-future', detail: 'x' }), /^Time of firing: it lies in the future by the clock of the service/);
});

test('an entry stands in one of a few states, in words', () => {
  const entry = { key: 'k', state: 'waiting', undo: null };
  const words = [
    [entry, /^Saved on this phone, not sent yet$/], [{ ...entry, state: 'stored' }, /^Stored by the service$/], [{ ...entry, state: 'refused' }, /^Refused/],
    [{ ...entry, state: 'stored', undo: { state: 'waiting', reason: 'r' } }, /not sent yet$/], [{ ...entry, state: 'stored', undo: { state: 'done', reason: 'slip' } }, /^Taken back: slip$/],
    [{ ...entry, state: 'stored', undo: { state: 'refused', detail: 'd' } }, /taking it back was refused: d$/],
  ];
  for (const [one, expected] of words) assert.match(stateWords(one), expected);
});

function control(touched = true) {
  const set = {};
  return { touched, fault: { textContent: '' }, main: { setAttribute: (name, value) => { set[name] = value; } }, set };
}

test('faults stand beside their field, or the next one above or below it', () => {
  const [name, length, untouched] = [control(), control(), control(false)];
  const controls = new Map([['/name', name], ['/cavity/0/length', length], ['/note', untouched]]);
  const faults = [
    { pointer: '/name', detail: 'a' }, { pointer: '/name', detail: 'b' }, { pointer: '/setup/cavity/0/length/value', detail: 'c' },
    { pointer: '/cavity/0', detail: 'd' }, { pointer: '/note', detail: 'e' }, { pointer: '/elsewhere', detail: 'f' }, { pointer: '', detail: 'g' }, { pointer: '/setup/pins', detail: 'h' },
  ];
  assert.deepEqual(showFaults(controls, faults, false), ['f', 'g', 'Shear pins: h']);
  assert.equal(name.fault.textContent, 'a; b');
  assert.equal(name.set['aria-invalid'], 'true');
  assert.equal(length.fault.textContent, 'c; d');
  assert.equal(untouched.fault.textContent, '');
  showFaults(controls, faults, true);
  assert.equal(untouched.fault.textContent, 'e');
  showFaults(controls, [], true);
  assert.equal(name.fault.textContent, '');
  assert.equal(name.set['aria-invalid'], 'false');
});

test('values are written as JSON, what is not there left out', () => {
  assert.equal(json({ a: 'x"y', b: [1, null, { c: true }], d: undefined }), '{"a":"x\\"y","b":[1,null,{"c":true}]}');
});
