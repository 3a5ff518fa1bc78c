// Adding and removing the photo of a test, from the page of its joint.

import { announce, h } from './dom.js';
import { NoAnswer, PATIENCE_OF_A_PHOTO, ask } from './api.js';
import { NoPhoto, prepared } from './photo.js';
import { wordsOf } from './faults.js';

const addressOf = (cell) => '/api/ground-tests/' + cell.dataset.photoOf + '/photo';

/** Asks, and shows the page anew; says in the cell what was refused. */
async function send(cell, method, body, headers) {
  try {
    const answer = await ask(method, addressOf(cell), body, headers, PATIENCE_OF_A_PHOTO);
    if (answer.ok) location.reload();
    else say(cell, answer.status === 401 ? 'Sign in again, in another tab.' : refusal(answer.body));
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    say(cell, 'The service cannot be reached; nothing changed.');
  }
}

function refusal(problem) {
  const first = (problem.errors || [])[0];
  return first ? wordsOf(first) : problem.detail || problem.title;
}

function say(cell, words) {
  cell.querySelector('.fault').textContent = words;
  announce(words);
}

async function chosen(cell, input) {
  const file = input.files[0];
  if (!file) return;
  input.value = ''; // the same file can be chosen again
  say(cell, '');
  try {
    const { bytes, type } = await prepared(file);
    await send(cell, 'PUT', bytes, { 'content-type': type });
  } catch (failure) {
    if (!(failure instanceof NoPhoto)) throw failure;
    say(cell, failure.message);
  }
}

function controls(cell, ...parts) {
  const before = cell.querySelector('.actions');
  if (before) before.remove();
  cell.append(h('div', { class: 'actions no-print' }, parts, h('p', { class: 'fault' })));
}

/** What can be done: add one where there is none, else remove it. */
function offer(cell) {
  if (cell.dataset.tag) {
    controls(cell, h('button', { type: 'button', 'aria-label': 'Remove the photo: ' + cell.dataset.what, onclick: () => sure(cell) }, 'Remove photo…'));
    return;
  }
  const input = h('input', { type: 'file', accept: 'image/jpeg,image/png', 'aria-label': 'Add a photo: ' + cell.dataset.what, onchange: () => chosen(cell, input) });
  controls(cell, h('span', { class: 'button choose-photo' }, 'Add a photo', input));
}

function sure(cell) {
  const yes = h('button', { type: 'button', onclick: () => send(cell, 'DELETE', undefined, { 'If-Match': cell.dataset.tag }) }, 'Yes, remove it for good');
  controls(cell, yes, h('button', { type: 'button', onclick: () => offer(cell) }, 'Keep it'));
  yes.focus();
}

document.querySelectorAll('[data-photo-of]').forEach(offer);
