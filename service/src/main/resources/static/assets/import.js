// An export, taken in from a file. What is wrong with it is said in the words of the service.

import { NoAnswer, ask } from './api.js';
import { h } from './dom.js';
import { wordsOf } from './faults.js';

const MOST = 20 * 1024 * 1024; // bytes, as the service takes
const SHOWN = 10;

const form = document.getElementById('take-in');
const file = document.getElementById('file');
const fault = document.getElementById('file-fault');
const said = document.getElementById('said');
const button = form.querySelector('button');

function refuse(words) {
  fault.textContent = words;
  file.setAttribute('aria-invalid', 'true');
  file.focus();
}

function say(...parts) {
  said.replaceChildren(...parts);
}

function count(number) {
  return number + (number === 1 ? ' row' : ' rows');
}

form.addEventListener('submit', async (event) => {
  event.preventDefault();
  fault.textContent = '';
  file.setAttribute('aria-invalid', 'false');
  say();
  const chosen = file.files[0];
  if (!chosen) return refuse('choose a file first');
  if (chosen.size > MOST) return refuse('the file has more than 20 MB');
  button.disabled = true;
  try {
    const answer = await ask('POST', '/api/import', chosen);
    if (answer.ok) {
      const { added, known } = answer.body;
      say(h('p', { class: 'notice' }, h('strong', {}, added === 0 ? 'Nothing was new. ' : count(added) + ' came in. '), known > 0 ? count(known) + ' were here already, just the same. ' : '', h('a', { href: '/', class: 'touch' }, 'To your rockets')));
    } else if (answer.status === 401) {
      refuse('sign in again, in another tab, and then press this once more');
    } else {
      const errors = answer.body.errors || [];
      refuse(answer.body.title + '; nothing was taken in');
      say(h('div', { class: 'fault-list' }, errors.length === 0 ? h('p', {}, answer.body.detail) : h('ul', {}, errors.slice(0, SHOWN).map((e) => h('li', {}, (e.pointer ? 'At ' + e.pointer + ': ' : '') + wordsOf(e))))));
    }
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    refuse('the service cannot be reached; nothing was taken in');
  } finally {
    button.disabled = false;
  }
});
