// A code that was shown to this phone: what stands behind the # is never sent by opening the page, and signs in only when pressed.

import { leaving } from './leaving.js';

const secret = new URLSearchParams(location.hash.slice(1)).get('once');

if (secret) {
  history.replaceState(null, '', location.pathname + location.search);
  const key = document.getElementById('key');
  key.value = secret;
  key.type = 'hidden';
  document.getElementById('key-label').remove();
  document.getElementById('what').textContent = 'Sign this phone in';
  document.getElementById('why').textContent = 'It can then see the rockets of whoever showed you the code, and log what they did. The code works once.';
  document.querySelector('button').focus();
}

// Whoever signs in may be another than before. The worker, where there is one, forgets once the key was taken.
if (!navigator.serviceWorker || !navigator.serviceWorker.controller) leaving(document.querySelector('form'));
