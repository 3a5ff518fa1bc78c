// A form for one thing that the service keeps: entered new, or read, changed and put away.

import { announce, h } from './dom.js';
import { NoAnswer, ask } from './api.js';
import { json, showFaults } from './forms.js';
import { keep } from './half-typed.js';
import { newKey } from './outbox.js';

/**
 * Fills the place of the form.
 *
 * @param root where it goes
 * @param at address of the thing, or null for a new one
 * @param create address to which a new one is posted
 * @param draft name under which half-typed values stay on this phone
 * @param fields controls by the name that the API has for them
 * @param more further parts: element, read(controls), typed(), set(values); or null
 * @param words what the buttons say: store, and put away where that can be, with what it means
 * @param done where to go afterwards, made from the answer's body (null after putting away)
 * @param read takes what is edited out of what the service answered
 */
export async function record({ root, at, create, draft, fields, more = null, words, done, read = (body) => body }) {
  const kept = keep(draft);
  const key = newKey();
  const trouble = h('div', { class: 'fault-list', role: 'alert' });
  const button = h('button', { class: 'main-action' }, words.store);
  let etag = null;
  const set = (values) => {
    for (const [name, c] of Object.entries(fields)) if (values[name] !== undefined) c.set(values[name]);
    if (more) more.set(values);
  };
  const typed = () => ({ ...Object.fromEntries(Object.entries(fields).map(([name, c]) => [name, c.typed()])), ...(more ? more.typed() : {}) });
  const collect = () => {
    const controls = new Map(Object.entries(fields).map(([name, c]) => ['/' + name, c]));
    const own = Object.fromEntries(Object.entries(fields).map(([name, c]) => [name, c.read()]));
    return { controls, body: json({ ...own, ...(more ? more.read(controls) : {}) }) };
  };

  function refuse(sentence, homeless = []) {
    trouble.replaceChildren(h('p', {}, sentence), homeless.length ? h('ul', {}, homeless.map((m) => h('li', {}, m))) : '');
    announce(sentence);
    const wrong = root.querySelector('[aria-invalid=true]');
    if (wrong) wrong.focus();
  }

  /** Asks the service and goes on, or says why not. */
  async function send(pressed, method, path, body, headers, controls) {
    pressed.disabled = true;
    try {
      const answer = await ask(method, path, body, headers);
      if (answer.ok) {
        await kept.drop();
        location.assign(done(answer.body));
        return;
      }
      if (answer.status === 401) return refuse('Sign in again, in another tab, and then press this once more.');
      if (answer.status === 412) return refuse('Not stored: it was changed elsewhere since this page was opened. Open it again; what you typed stays here.');
      const errors = answer.body.errors || [];
      const homeless = showFaults(controls, errors, true);
      refuse(errors.length ? 'Not stored. Look at what is marked.' : answer.body.title + '. ' + answer.body.detail, homeless);
    } catch (failure) {
      if (!(failure instanceof NoAnswer)) throw failure;
      refuse('Not stored: the service cannot be reached. What you typed stays on this phone.');
    } finally {
      pressed.disabled = false;
    }
  }

  function submit(event) {
    event.preventDefault();
    const { body, controls } = collect();
    if (at) send(button, 'PUT', at, body, { 'If-Match': etag }, controls);
    else send(button, 'POST', create, body, { 'Idempotency-Key': key }, controls);
  }

  /** Asked twice, since it cannot be taken back here. */
  function away() {
    const holder = h('section', { class: 'away' });
    const ask = (focus) => {
      const first = h('button', { type: 'button', onclick: () => confirm() }, words.away);
      holder.replaceChildren(h('p', { class: 'small' }, words.meaning), first);
      if (focus) first.focus();
    };
    const confirm = () => {
      const yes = h('button', { type: 'button', onclick: () => send(yes, 'DELETE', at, undefined, { 'If-Match': etag }, new Map()) }, 'Yes, ' + words.away.toLowerCase());
      holder.replaceChildren(h('p', {}, h('strong', {}, words.sure)), h('div', { class: 'actions' }, yes, h('button', { type: 'button', onclick: () => ask(true) }, 'Keep it')));
      yes.focus();
    };
    ask(false);
    return holder;
  }

  if (at) {
    try {
      const answer = await ask('GET', at);
      if (!answer.ok) throw new NoAnswer('status ' + answer.status);
      etag = answer.etag;
      set(read(answer.body));
    } catch (failure) {
      if (!(failure instanceof NoAnswer)) throw failure;
      root.replaceChildren(h('p', { class: 'notice' }, 'The service cannot be reached, so there is nothing to change here just now.'));
      return;
    }
  }
  const change = () => kept.write(typed());
  const form = h('form', { novalidate: true, onsubmit: submit, oninput: change, onchange: change }, Object.values(fields).map((c) => c.element), more ? more.element : null, trouble, button);
  const found = await kept.read();
  if (found) set(found);
  root.replaceChildren(found ? kept.notice() : '', form, at && words.away ? away() : '');
}
