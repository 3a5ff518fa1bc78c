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
    meaning: 'It leaves the lists, and no charge is named for it, until you bring it back. Its log stays, and still teaches the fleet.',
    sure: 'Put it away?',
  },
  done: (body) => (id ? (body ? '/airframes/' + id : '/') : '/airframes/' + body.id + '/joints/new'),
});
