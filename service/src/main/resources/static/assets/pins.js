// A batch of shear pins; from two pulled pins on it knows its own strength.

import { announce, h } from './dom.js';
import { NoAnswer, ask } from './api.js';
import { amount, choice, json, showFaults, text } from './forms.js';
import { newKey } from './outbox.js';
import { record } from './record.js';
import { THREADS } from './rows.js';

const root = document.getElementById('form');
const pulls = document.getElementById('pulls');
const { id } = root.dataset;

record({
  root,
  at: id ? '/api/pin-batches/' + id : null,
  create: '/api/pin-batches',
  draft: 'pins-' + (id || 'new'),
  fields: {
    name: text('Name', { hint: 'Such as "white nylon, bag of 100".' }),
    thread: choice('Thread', THREADS),
    lot: text('Lot', { hint: 'May stay empty.' }),
    note: text('Note', { most: 500, rows: 2 }),
  },
  words: {
    store: id ? 'Store the change' : 'Store this batch',
    away: 'Put this batch away',
    meaning: 'New setups can no longer name it. Setups that did keep what its pulls said.',
    sure: 'Put it away for good?',
  },
  done: (body) => (body ? '/stock/pins/' + body.id : '/stock'),
});

if (pulls) {
  pullForm();
  for (const item of document.querySelectorAll('[data-pull]')) leaveOut(item);
}

/** A pull that does not belong to the batch stays in the list, and does not count; one entered by mistake is deleted. */
function leaveOut(item) {
  const { pull: number, leftOut } = item.dataset;
  const out = leftOut === 'true';
  const at = '/api/pin-batches/' + id + '/pull-tests/' + number;
  const trouble = h('span', { class: 'fault', role: 'alert' });
  const holder = h('span', { class: 'choice-of' });
  const press = async (pressed, method, path, headers) => {
    pressed.disabled = true;
    try {
      const answer = await ask(method, path, undefined, headers);
      if (answer.ok) {
        location.reload();
        return;
      }
      trouble.textContent = answer.status === 401 ? 'Sign in again, in another tab, and then press again.'
        : answer.status === 412 ? 'Not changed: the batch was changed elsewhere. Open this page again.' : answer.body.detail;
    } catch (failure) {
      if (!(failure instanceof NoAnswer)) throw failure;
      trouble.textContent = 'Not changed: the service cannot be reached.';
    } finally {
      pressed.disabled = false;
    }
  };
  const button = (words, work) => {
    const made = h('button', { type: 'button', onclick: () => work(made) }, words);
    return made;
  };
  const offer = () => holder.replaceChildren(
    button(out ? 'Count pull ' + number + ' again' : 'Leave pull ' + number + ' out', (b) => press(b, 'POST', at + (out ? '/take-back' : '/leave-out'))),
    button('Delete pull ' + number, sure));
  const sure = () => {
    const yes = button('Yes, delete pull ' + number, (b) => press(b, 'DELETE', at, { 'If-Match': pulls.dataset.tag }));
    holder.replaceChildren(h('strong', {}, 'For good? '), yes, button('Keep it', () => { offer(); holder.lastChild.focus(); }));
    yes.focus();
  };
  offer();
  item.append(holder, trouble);
}

/** One more pin pulled until it broke. */
function pullForm() {
  const force = amount('Force at which it broke', 'force', pulls.dataset.units);
  const trouble = h('div', { class: 'fault-list', role: 'alert' });
  const button = h('button', {}, 'Add this pull');
  const key = newKey(); // for the life of the form: what was refused is free to be sent again, what was stored is not stored twice
  const submit = async (event) => {
    event.preventDefault();
    button.disabled = true;
    try {
      const answer = await ask('POST', '/api/pin-batches/' + id + '/pull-tests', json({ force: force.read() }), { 'Idempotency-Key': key });
      if (answer.ok) {
        location.reload();
        return;
      }
      if (answer.status === 401) trouble.textContent = 'Sign in again, in another tab, and then add it.';
      else {
        const homeless = showFaults(new Map([['/force', force]]), answer.body.errors || [], true);
        trouble.textContent = (answer.body.errors ? homeless : [answer.body.detail]).join('; ');
      }
      force.main.focus();
    } catch (failure) {
      if (!(failure instanceof NoAnswer)) throw failure;
      trouble.textContent = 'Not added: the service cannot be reached.';
      announce(trouble.textContent);
    } finally {
      button.disabled = false;
    }
  };
  pulls.replaceChildren(h('form', { novalidate: true, onsubmit: submit }, force.element, trouble, button));
}
