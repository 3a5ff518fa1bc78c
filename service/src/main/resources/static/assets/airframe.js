// An airframe: a name is enough.

import { amount, choice, text } from './forms.js';
import { record } from './record.js';

const root = document.getElementById('form');
const { id, units = 'metric' } = root.dataset;

record({
  root,
  at: id ? '/api/airframes/' + id : null,
  create: '/api/airframes',
  draft: 'airframe-' + (id || 'new'),
  fields: {
    name: text('Name'),
    units: choice('Units of its answers', [['metric', 'metric'], ['us', 'US customary']]),
    outerDiameter: amount('Outer diameter', 'length', units, { hint: 'May stay empty.' }),
    notes: text('Notes', { most: 2000, rows: 3 }),
  },
  words: {
    store: id ? 'Store the change' : 'Store it and describe a joint',
    away: 'Put this airframe away',
    meaning: 'It leaves the lists and can no longer be changed. Its log stays, and still teaches the fleet.',
    sure: 'Put it away for good?',
  },
  done: (body) => (id ? (body ? '/airframes/' + id : '/') : '/airframes/' + body.id + '/joints/new'),
});
