// What this phone keeps, on the first page: how many joints work without network, and what is not sent yet.

import { clock, h } from './dom.js';
import { drain, drainNow, entries, unsent, unsentPhoto } from './outbox.js';
import { joints } from './known.js';
import { waiting } from './kept.js';
import { onChange } from './store.js';

const kit = document.getElementById('kit');

async function fill() {
  const kept = (await joints()).filter((joint) => joint.tree);
  const known = await entries();
  const open = known.filter(unsent);
  const photos = known.filter(unsentPhoto);
  if (kept.length === 0 && open.length + photos.length === 0) return;
  const newest = kept.map((joint) => joint.at).sort().pop();
  kit.replaceChildren(
    h('p', {}, kept.length === 0 ? 'No plan is kept on this device yet. ' : h('span', {}, h('strong', {}, 'Ready without network on this device: '), kept.length + (kept.length === 1 ? ' joint' : ' joints') + ', kept ' + clock(newest)),
      kept.length === 0 ? h('a', { href: '/field' }, 'At the field') : null),
    ...(open.length + photos.length ? [h('p', { class: 'waits' }, waiting(open.length, photos.length)),
      h('button', { type: 'button', onclick: drainNow }, 'Send now')] : []));
  kit.hidden = false;
}

onChange(fill);
fill().then(drain).catch(() => { kit.hidden = true; }); // a browser that keeps nothing shows nothing here
