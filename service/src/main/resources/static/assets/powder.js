// A powder of the stock, or a lot of one.

import { amount, number, text } from './forms.js';
import { record } from './record.js';

const root = document.getElementById('form');
const { id } = root.dataset;

record({
  root,
  at: id ? '/api/powders/' + id : null,
  create: '/api/powders',
  draft: 'powder-' + (id || 'new'),
  fields: {
    name: text('Name', { hint: 'Setups name it by this.' }),
    lot: text('Lot', { hint: 'As the maker prints it; may stay empty.' }),
    granulation: text('Grain size as sold', { most: 40, hint: 'May stay empty.' }),
    powderForce: amount('Powder force', 'energy', 'metric', { hint: 'What a kilogram gives to the gas. The standard fine powder has 219 kJ/kg; your own tests correct for what yours gives.' }),
    relativeUncertainty: number('How uncertain that is, as a fraction', { hint: '0.10 where empty: one standard deviation of 10 %.' }),
    note: text('Note', { most: 500, rows: 2 }),
  },
  words: {
    store: id ? 'Store the change' : 'Store this powder',
    away: 'Put this powder away',
    meaning: 'New setups can no longer name it. Setups that did stay as they are.',
    sure: 'Put it away for good?',
  },
  done: () => '/stock',
});
