// A document taken in from a file, all of it or nothing. What is wrong with it is said in the words of the service.

import { NoAnswer, ask } from './api.js';
import { h } from './dom.js';
import { wordsOf } from './faults.js';

const SHOWN = 10;

const form = document.getElementById('take-in');
const file = document.getElementById('file');
const said = document.getElementById('said');
const button = form.querySelector('button');

/** Says at a field what is wrong with it. */
export function refuse(field, words) {
  document.getElementById(field.id + '-fault').textContent = words;
  field.setAttribute('aria-invalid', 'true');
  field.focus();
}

function clear() {
  for (const field of form.querySelectorAll('input')) {
    document.getElementById(field.id + '-fault').textContent = '';
    field.setAttribute('aria-invalid', 'false');
  }
  said.replaceChildren();
}

/** What came of it stands below the fields. */
export function say(...parts) {
  said.replaceChildren(...parts);
}

/**
 * Sends the file of the form whenever that is asked for.
 *
 * @param limit bytes that the service takes, and the words where there are more
 * @param path answers where to send it, or null where another field is at fault and says so
 * @param done is told what the service answered
 */
export function takeIn(limit, path, done) {
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    clear();
    const chosen = file.files[0];
    if (!chosen) return refuse(file, 'choose a file first');
    if (chosen.size > limit.bytes) return refuse(file, limit.words);
    const to = path();
    if (to === null) return undefined;
    button.disabled = true;
    try {
      const answer = await ask('POST', to, chosen);
      if (answer.ok) {
        done(answer.body);
      } else if (answer.status === 401) {
        refuse(file, 'sign in again, in another tab, and then press this once more');
      } else {
        const errors = answer.body.errors || [];
        refuse(file, answer.body.title + '; nothing was taken in');
        say(h('div', { class: 'fault-list' }, errors.length === 0 ? h('p', {}, answer.body.detail) : h('ul', {}, errors.slice(0, SHOWN).map((e) => h('li', {}, (e.pointer ? 'At ' + e.pointer + ': ' : '') + wordsOf(e))))));
      }
    } catch (failure) {
      if (!(failure instanceof NoAnswer)) throw failure;
      refuse(file, 'the service cannot be reached; nothing was taken in');
    } finally {
      button.disabled = false;
    }
    return undefined;
  });
}
