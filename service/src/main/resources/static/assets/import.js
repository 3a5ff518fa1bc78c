// An export, taken in from a file.

import { h } from './dom.js';
import { say, takeIn } from './take-in.js';

const LIMIT = { bytes: 20 * 1024 * 1024, words: 'the file has more than 20 MB' };

function count(number) {
  return number + (number === 1 ? ' row' : ' rows');
}

takeIn(LIMIT, () => '/api/import', ({ added, known }) => {
  say(h('p', { class: 'notice' }, h('strong', {}, added === 0 ? 'Nothing was new. ' : count(added) + ' came in. '), known > 0 ? count(known) + ' were here already, just the same. ' : '', h('a', { href: '/', class: 'touch' }, 'To your rockets')));
});
