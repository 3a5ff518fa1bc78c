// The depth that the slider stands on. The service alone works out what it does: it is asked as the slider comes to rest.

import { NoAnswer, part } from './api.js';
import { announce } from './dom.js';

const REST = 120;

const slide = document.getElementById('at');
const number = document.getElementById('at-number');
let timer = 0;
let asked = 0;

/** What the slider stands on, where the service has told what that does. */
async function look() {
  const mine = ++asked;
  const query = '?' + new URLSearchParams(new FormData(slide.form));
  let said;
  try {
    const answer = await part(location.pathname + query, null, 'looked-at');
    if (mine !== asked) return;
    if (answer.ok) {
      document.getElementById('looked-at').replaceWith(answer.body);
      history.replaceState(null, '', query);
    }
    said = answer.ok ? document.getElementById('at-depth').textContent : 'The service refused it.';
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    said = 'The service cannot be reached; what stands here is of the depth before.';
  }
  document.getElementById('at-fault').textContent = said.startsWith('The service') ? said : '';
  announce(said);
}

if (slide) {
  slide.addEventListener('input', () => {
    number.textContent = slide.value + ' ' + slide.dataset.unit;
    clearTimeout(timer);
    timer = setTimeout(look, REST);
  });
}
