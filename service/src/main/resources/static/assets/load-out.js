// What is installed for a flight, compartment by compartment.

import { h } from './dom.js';
import { NoAnswer, ask } from './api.js';
import { text } from './forms.js';
import { record } from './record.js';
import { contentsOf } from './contents.js';
import { list, packed } from './rows.js';

const root = document.getElementById('form');
const { airframe, id, units } = root.dataset;

begin();

async function begin() {
  const joints = await known();
  if (!joints) {
    root.replaceChildren(h('p', { class: 'notice' }, 'The service cannot be reached, so the joints of this airframe are not known just now.'));
    return;
  }
  record({
    root,
    at: id ? '/api/load-outs/' + id : null,
    create: '/api/airframes/' + airframe + '/load-outs',
    draft: id ? 'load-out-' + id : 'load-out-new-' + airframe,
    fields: {
      name: text('Name', { hint: 'Such as "long case, big main".' }),
      motorCase: text('Motor case', { hint: 'May stay empty. Where it reaches into a compartment, list its end there too.' }),
      note: text('Note', { most: 500, rows: 2 }),
    },
    more: compartments(joints),
    words: {
      store: id ? 'Store the change' : 'Store it and see what fits',
      away: 'Remove this load-out',
      meaning: 'No setup and no test depends on it.',
      sure: 'Remove it for good?',
    },
    done: () => '/airframes/' + airframe + '/load-outs',
    read: (body) => body.loadOut,
  });
}

async function known() {
  try {
    const answer = await ask('GET', '/api/airframes/' + airframe + '/joints');
    return answer.ok ? answer.body.items : null;
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    return null;
  }
}

/** A list of items for each joint; a joint without any is left out of what is sent. */
function compartments(joints) {
  const parts = joints.map((joint) => ({
    joint,
    items: list(joint.name, 'All that is in this compartment, but for what is pushed in at the joint.' + (id ? '' : ' What its setup has in it is filled in: type how long each is as packed, and take out what does not fly.'), 'Add an item', (v) => packed(units, v), () => element.dispatchEvent(new Event('input', { bubbles: true }))),
  }));
  const element = h('div', {}, parts.map((part) => part.items.element));
  if (!id) parts.forEach((part) => part.items.replace(contentsOf(part.joint.setup)));
  return {
    element,
    set(values) {
      for (const compartment of values.compartments || []) {
        const part = parts.find((p) => p.joint.id === compartment.jointId);
        if (part) part.items.replace(compartment.items);
      }
    },
    typed: () => ({ compartments: parts.map((part) => ({ jointId: part.joint.id, items: part.items.typed() })) }),
    read(controls) {
      const filled = parts.filter((part) => part.items.size());
      return { compartments: filled.map((part, i) => ({ jointId: part.joint.id, items: part.items.read('/compartments/' + i + '/items', controls) })) };
    },
  };
}
