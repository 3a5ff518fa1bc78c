// Taking a test out of what counts, and back in, from the page of its joint.

import { announce, h } from './dom.js';
import { NoAnswer, ask } from './api.js';

function fault(answer) {
  const body = answer.body || {};
  const first = (body.errors || [])[0];
  return (first && first.detail) || body.detail || body.title || 'The service refused it.';
}

async function send(cell, address, reason) {
  const said = cell.querySelector('.fault');
  try {
    const answer = await ask('POST', address, JSON.stringify({ reason }));
    if (answer.ok) location.reload();
    else said.textContent = fault(answer);
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    said.textContent = 'The service cannot be reached; nothing changed.';
  }
  announce(said.textContent);
}

function closed(cell) {
  const back = cell.dataset.void === 'true';
  const words = back ? 'Count it again' : 'Make it void';
  cell.replaceChildren(h('button', { type: 'button', 'aria-label': words + ': ' + cell.dataset.what, onclick: () => asked(cell, back) }, back ? 'Count it again' : 'Void…'));
}

function asked(cell, back) {
  const id = 'reason-' + cell.dataset.test;
  const reason = h('input', { id, maxlength: '500', autocomplete: 'off' });
  cell.replaceChildren(h('form', {
    novalidate: true,
    onsubmit: (event) => {
      event.preventDefault();
      send(cell, '/api/ground-tests/' + cell.dataset.test + (back ? '/unvoid' : '/void'), reason.value.trim());
    },
  },
  h('label', { for: id }, back ? 'Why it counts after all' : 'Why it does not count'), reason, h('p', { class: 'fault' }),
  h('div', { class: 'actions' }, h('button', {}, back ? 'Count it again' : 'Make it void'), h('button', { type: 'button', onclick: () => closed(cell) }, 'Keep it'))));
  reason.focus();
}

document.querySelectorAll('[data-test]').forEach(closed);
