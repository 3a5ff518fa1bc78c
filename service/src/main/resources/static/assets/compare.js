// A change typed at the setup, as one of the columns. Only this browser has it: it is sent along to be worked out, and not stored.

import { NoAnswer, part } from './api.js';
import { announce } from './dom.js';
import { keep } from './half-typed.js';

const form = document.getElementById('choice');
const { joint } = form.dataset;
const offer = document.getElementById('tried-choice');
const box = offer.querySelector('input');
const fault = document.getElementById('tried-fault');
const kept = await keep('setup-' + joint).read();

if (kept && kept.body) {
  offer.hidden = false;
  box.disabled = false;
  if (box.checked) await look(kept.body);
}

/** Asks for the columns with the change among them. */
async function look(setup) {
  const asked = JSON.stringify(new URLSearchParams(location.search).getAll('with'));
  try {
    const answer = await part('/joints/' + joint + '/compare', '{"setup":' + setup + ',"with":' + asked + '}', 'compared');
    if (answer.ok) document.getElementById('compared').replaceWith(answer.body);
    else fault.textContent = answer.status === 401 ? 'Sign in again to have the change worked out.' : 'The change cannot be as it is typed: ' + why(answer.body);
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    fault.textContent = 'The service cannot be reached, so the change is not among the columns.';
  }
  announce(fault.textContent);
}

function why(problem) {
  const first = (problem.errors || [])[0];
  return (first ? first.detail : problem.detail) + '. Its page marks the field.';
}
