import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';
import { BASIS, fire, joint, report, stop } from './samples.js';

const { advanced, chargeCaution, chargeFault, outlook, pendingOf, sameBasis } = await module('plan');

test('with nothing unsent the service is repeated', () => {
  const known = joint();
  assert.deepEqual(outlook(known, []), { kind: 'advice', step: known.advice });
  assert.equal(outlook({ ...known, advice: null }, []).kind, 'unknown');
});

test('tests not sent yet lead down the tree, also where digits differ', () => {
  const none = report('0.850', 'none');
  assert.deepEqual(outlook(joint(), [none]), { kind: 'planned', step: fire(1.05) });
  assert.deepEqual(outlook(joint(), [report('0.85', 'separated')]), { kind: 'planned', step: stop(0.85) });
});

test('where what happened is not in the plan, the plan ends', () => {
  const ends = [
    [[report('0.85', 'none', { state: 'refused' })], /refused/],
    [[report('0.85', 'none', { occasion: 'flight' })], /flight/],
    [[report('0.85', 'none', { damaged: true })], /broke something/],
    [[report('0.90', 'none')], /charge fired is not the one/],
    [[report('0.85', 'none', { unit: 'gr' })], /charge fired is not the one/],
    [[report('0.85', 'none', { revision: 2 })], /another setup/],
    [[report('0.85', 'partial')], /does not reach/],
    [[report('0.85', 'none'), report('1.05', 'none'), report('1.05', 'none')], /does not reach/],
    [[report('0.85', 'separated'), report('0.85', 'separated')], /charge fired is not the one/],
  ];
  for (const [pending, reason] of ends) {
    const found = outlook(joint(), pending);
    assert.equal(found.kind, 'ends', JSON.stringify(pending));
    assert.match(found.reason, reason);
    assert.equal(found.step, undefined);
  }
});

test('a tree of another basis is no tree', () => {
  for (const other of [{ model: 'm2' }, { setupRevision: 2 }, { tests: 3 }, { fleetTests: 6 }]) {
    const basis = { ...BASIS, ...other };
    assert.equal(sameBasis(BASIS, basis), false);
    assert.equal(outlook(joint({ tree: { first: fire(0.85), basis } }), [report('0.85', 'none')]).kind, 'ends');
  }
  assert.equal(sameBasis(BASIS, { ...BASIS }), true);
  assert.equal(outlook(joint({ tree: null }), [report('0.85', 'none')]).kind, 'ends');
});

test('pending are the tests of the joint that the service does not know, oldest first', () => {
  const entries = [
    report('2', 'none', { order: 2 }), report('1', 'none', { order: 1, state: 'refused' }), report('3', 'none', { order: 3, state: 'stored' }),
    report('4', 'none', { order: 4, undo: { state: 'waiting' } }), report('5', 'none', { order: 5, jointId: 'other' }),
  ];
  assert.deepEqual(pendingOf(entries, 'j').map((e) => e.charge), ['1', '2']);
});

test('the tree goes on with a stored test only where the service agrees', () => {
  const basis = { ...BASIS, tests: 3, fleetTests: 6 };
  const next = { ...fire(1.05), basis };
  const entry = report('0.85', 'none');
  assert.deepEqual(advanced(joint(), entry, next), { first: fire(1.05), basis });
  const landed = { ...stop(0.85), basis };
  assert.deepEqual(advanced(joint(), report('0.85', 'separated'), landed), { first: stop(0.85), basis });
  const not = [
    [{ ...entry, damaged: true }, next], [{ ...entry, occasion: 'flight' }, next], [{ ...entry, charge: '0.9' }, next], [{ ...entry, unit: 'gr' }, next],
    [{ ...entry, outcome: 'partial' }, next], [entry, { ...fire(1.10), basis }], [entry, { ...stop(1.05), basis }], [entry, { decision: 'fire', basis }],
    [entry, { ...next, basis: { ...basis, tests: 4 } }], [entry, { ...next, basis: { ...basis, fleetTests: 7 } }],
    [entry, { ...next, basis: { ...basis, setupRevision: 2 } }], [entry, { ...next, basis: { ...basis, model: 'm2' } }],
  ];
  for (const [fired, said] of not) assert.equal(advanced(joint(), fired, said), null, JSON.stringify([fired, said]));
  assert.equal(advanced(joint({ tree: { first: stop(0.85), basis: BASIS } }), entry, next), null);
  assert.equal(advanced(joint({ tree: null }), entry, next), null);
});

test('a charge to log is a number and more than nothing; above the ceiling it is said', () => {
  assert.match(chargeFault(null), /as a number/);
  assert.match(chargeFault('0.00'), /more than nothing/);
  assert.equal(chargeFault('0.85'), null);
  assert.match(chargeCaution(joint(), '2.55', 'g'), /above the ceiling of 2\.50 g/);
  assert.equal(chargeCaution(joint(), '2.504', 'g'), null);
  assert.equal(chargeCaution(joint(), '99', 'gr'), null);
  assert.equal(chargeCaution(joint(), null, 'g'), null);
  assert.equal(chargeCaution(joint({ advice: null }), '99', 'g') ?? null, null);
});
