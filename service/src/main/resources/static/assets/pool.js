// A snapshot of the pool, taken in from a file; what is answered rests on it from then on.

import { refuse, takeIn } from './take-in.js';

const LIMIT = { bytes: 256 * 1024, words: 'no snapshot is as large as this file' };

const giver = document.getElementById('givenBy');

takeIn(
  LIMIT,
  () => {
    const by = giver.value.trim();
    if (by === '') refuse(giver, 'say who gave it');
    return by === '' ? null : '/api/pool/snapshots?use=true&givenBy=' + encodeURIComponent(by);
  },
  () => location.assign('/pool'),
);
