// Values half typed into a form stay on this phone until they are stored or dropped.

import { h } from './dom.js';
import { get, write } from './store.js';

/**
 * The keeper of one form.
 *
 * @param name of the form, one for each thing described
 */
export function keep(name) {
  const change = (work) => write(['drafts'], work).catch(() => {}); // a browser without storage only forgets
  return {
    /** What was typed before, or undefined. */
    async read() {
      const found = await get('drafts', name).catch(() => undefined);
      return found && found.typed;
    },
    write: (typed) => change(([drafts]) => drafts.put({ joint: name, typed })),
    drop: () => change(([drafts]) => drafts.delete(name)),
    /** Says that the form holds what was typed before, with a way out of it. */
    notice() {
      return h('div', { class: 'notice', id: 'half-typed' },
        h('p', {}, 'This is what you typed before; it was kept on this phone and is not stored yet.'),
        h('button', { type: 'button', onclick: async () => { await this.drop(); location.reload(); } }, 'Drop it'));
    },
  };
}
