// What to do next at a joint, from what this phone knows. It never works out a charge: it repeats what the service said,
// or walks the tree that the service planned. Where neither holds any more, it says that the plan ends.

import { compare, never } from './decimal.js';

/** Tests of a joint that the service does not know of yet, oldest first. */
export function pendingOf(entries, jointId) {
  return entries
    .filter((e) => e.jointId === jointId && (e.state === 'waiting' || e.state === 'refused') && !e.undo)
    .sort((a, b) => a.order - b.order);
}

/**
 * What to do next.
 *
 * @param joint as stored, with the service's advice and the tree
 * @param pending tests the service does not know of yet
 * @returns {{kind: 'advice'|'planned'|'ends'|'unknown', step?: object, reason?: string}}
 */
export function outlook(joint, pending) {
  if (!joint.advice) return { kind: 'unknown', reason: 'This phone has not yet heard from the service about this joint.' };
  if (pending.length === 0) return { kind: 'advice', step: joint.advice };
  let step = usableTree(joint);
  for (const entry of pending) {
    if (entry.state === 'refused') return ends('The service refused a test of this joint: correct or drop it.');
    if (entry.occasion === 'flight') return ends('A flight is saved on this phone. What comes next is known when it is sent.');
    if (entry.damaged) return ends('A test broke something. Fire nothing more here until this test is sent.');
    if (!step) return ends('The plan kept on this phone does not reach this far.');
    if (entry.revision !== joint.tree.basis.setupRevision) return ends('A test was fired in another setup.');
    if (step.decision !== 'fire' || entry.unit !== step.charge.unit || compare(entry.charge, String(step.charge.value)) !== 0) {
      return ends('The charge fired is not the one that the stored plan names.');
    }
    const branch = step.then.find((b) => b.outcome === entry.outcome);
    step = branch && branch.step;
  }
  return step ? { kind: 'planned', step } : ends('The plan kept on this phone does not reach this far.');
}

function ends(reason) {
  return { kind: 'ends', reason };
}

/** The first step of the stored tree, where it belongs to the advice that stands. */
function usableTree(joint) {
  return joint.tree && sameBasis(joint.tree.basis, joint.advice.basis) ? joint.tree.first : null;
}

/** Whether two answers rest on the same model, setup and tests, and count on films alike. */
export function sameBasis(a, b) {
  return a.model === b.model && a.setupRevision === b.setupRevision && a.tests === b.tests && a.fleetTests === b.fleetTests && a.filmedPercent === b.filmedPercent;
}

/**
 * The tree one test further on, where it agrees with what the service now advises; else null.
 */
export function advanced(joint, entry, next) {
  const first = usableTree(joint);
  const before = joint.tree && joint.tree.basis;
  if (!first || entry.damaged || entry.occasion === 'flight' || first.decision !== 'fire') return null;
  if (compare(entry.charge, String(first.charge.value)) !== 0 || entry.unit !== first.charge.unit) return null;
  if (next.basis.tests !== before.tests + 1 || next.basis.fleetTests !== before.fleetTests + 1) return null;
  if (next.basis.setupRevision !== before.setupRevision || next.basis.model !== before.model) return null;
  const branch = first.then.find((b) => b.outcome === entry.outcome);
  if (!branch || branch.step.decision !== next.decision) return null;
  const named = branch.step.charge || branch.step.flightCharge;
  const advised = next.charge || next.flightCharge;
  if (named && (!advised || compare(String(named.value), String(advised.value)) !== 0)) return null;
  return { first: branch.step, basis: next.basis };
}

/** Why a charge cannot be logged, or null. */
export function chargeFault(charge) {
  if (charge === null) return 'Type the charge as a number, such as 0.85.';
  if (compare(charge, '0') === 0) return 'A charge is more than nothing.';
  return null;
}

/** What to mind of a charge that was fired though no plan would name it, or null. */
export function chargeCaution(joint, charge, unit) {
  const ceiling = joint.advice && joint.advice.ceiling;
  return charge !== null && ceiling && ceiling.unit === unit && compare(charge, String(ceiling.value)) > 0
    ? 'That is above the ceiling of ' + never(ceiling.value, joint.measure.value) + ' ' + ceiling.unit + '. If it was really fired, save it: it is marked as beyond the ceiling. Look the airframe over before anything else.'
    : null;
}
