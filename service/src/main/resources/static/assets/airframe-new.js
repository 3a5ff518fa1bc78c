// A new airframe: a name is enough.

import { h } from './dom.js';
import { NoAnswer, ask } from './api.js';
import { amount, choice, json, showFaults, text } from './forms.js';
import { newKey } from './outbox.js';

const root = document.getElementById('airframe');
const key = newKey();
const fields = {
  name: text('Name'),
  units: choice('Units of its answers', [['metric', 'metric'], ['us', 'US customary']]),
  outerDiameter: amount('Outer diameter', 'length', 'metric', { hint: 'May stay empty.' }),
  notes: text('Notes', { most: 2000, rows: 3 }),
};
const trouble = h('div', { class: 'fault-list', role: 'alert' });
const button = h('button', { class: 'main-action' }, 'Store it and describe a joint');

root.replaceChildren(h('form', { novalidate: true, onsubmit: submit }, Object.values(fields).map((c) => c.element), trouble, button));

async function submit(event) {
  event.preventDefault();
  button.disabled = true;
  const controls = new Map(Object.entries(fields).map(([name, c]) => ['/' + name, c]));
  try {
    const body = json(Object.fromEntries(Object.entries(fields).map(([name, c]) => [name, c.read()])));
    const answer = await ask('POST', '/api/airframes', body, { 'Idempotency-Key': key });
    if (answer.ok) {
      location.assign('/airframes/' + answer.body.id + '/joints/new');
      return;
    }
    const homeless = answer.status === 401 ? [] : showFaults(controls, answer.body.errors || [], true);
    trouble.replaceChildren(h('p', {}, answer.status === 401 ? 'Sign in again, in another tab, and then store it.' : [answer.body.title + '.', ...homeless].join(' ')));
    const wrong = root.querySelector('[aria-invalid=true]');
    if (wrong) wrong.focus();
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    trouble.replaceChildren(h('p', {}, 'Not stored: the service cannot be reached.'));
  } finally {
    button.disabled = false;
  }
}
