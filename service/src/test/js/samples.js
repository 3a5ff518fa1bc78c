// A joint as a phone keeps it, its plan, and tests of it.

export const BASIS = { model: 'm1', setupRevision: 1, tests: 2, fleetTests: 5 };

/** A step of a plan that fires, and what follows it. */
export function fire(grams, then = []) {
  return { decision: 'fire', charge: { value: grams, unit: 'g' }, then };
}

/** A step that has found the charge to fly. */
export function stop(grams) {
  return { decision: 'stop', flightCharge: { value: grams, unit: 'g' } };
}

const PLAN = fire(0.85, [{ outcome: 'none', step: fire(1.05) }, { outcome: 'separated', step: stop(0.85) }]);

/** A joint with a plan two tests deep, that knows nothing of a partial separation. */
export function joint(other = {}) {
  return {
    id: 'j', index: 0, measure: { value: '0.05', unit: 'g' },
    advice: { decision: 'fire', charge: { value: 0.85, unit: 'g' }, ceiling: { value: 2.504, unit: 'g' }, basis: BASIS },
    tree: { first: PLAN, basis: BASIS },
    ...other,
  };
}

/** The same as the field kit brings it. */
export function ofKit(other = {}) {
  return { id: 'j', measure: { value: 0.05, unit: 'g' }, advice: joint().advice, plan: PLAN, ...other };
}

/** A test saved on the phone. */
export function report(charge, outcome, other = {}) {
  return {
    key: 'field-' + charge + outcome, jointId: 'j', charge, unit: 'g', outcome, occasion: 'ground', damaged: false, revision: 1, order: 1,
    body: JSON.stringify({ charge: { value: Number(charge), unit: 'g' }, outcome }), state: 'waiting', attempts: 0, undo: null, ...other,
  };
}
