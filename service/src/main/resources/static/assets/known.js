// What this phone knows of joints: the field kit, all of it in one answer. Plans take the service longest, so the answers without
// them are asked for first and shown at once; nothing that did not change is sent again.

import { all, change, changed, get, write } from './store.js';
import { NoAnswer, SignedOut, ask } from './api.js';
import { advanced, sameBasis } from './plan.js';
import { heardOfFilming, tellFilming } from './filming.js';
import { keepPages } from './pages.js';

const KIT = '/api/field-kit';
const DEPTH = 4;

/** Where the last refresh stands: 'asking', 'fresh', 'unreachable', 'signed-out' or null; whether every plan is kept; joints left out. */
export const freshness = { state: null, ready: false, left: 0 };

let refreshing = null;
let wanted = null; // a joint whose refresh was asked for while another ran
let learnings = 0; // what was learned while an answer was on its way makes that answer old

/** Takes the kit anew, the given joint first; one refresh runs at a time, and one asked for meanwhile follows it. */
export function refresh(firstJoint) {
  if (refreshing) {
    wanted = { firstJoint };
    return refreshing;
  }
  freshness.state = 'asking';
  refreshing = reading(firstJoint)
    .then(() => { freshness.state = 'fresh'; })
    .catch((failure) => {
      wanted = null;
      if (failure instanceof SignedOut) freshness.state = 'signed-out';
      else if (failure instanceof NoAnswer) freshness.state = 'unreachable';
      else throw failure;
    })
    .finally(() => {
      refreshing = null;
      changed();
      if (wanted) {
        const next = wanted;
        wanted = null;
        refresh(next.firstJoint);
      }
    });
  return refreshing;
}

async function reading(firstJoint) {
  await tellFilming();
  if (firstJoint) await take('joint=' + firstJoint + '&depth=' + DEPTH, null, keepOne);
  await take('depth=0', 'quick', keepAll);
  await take('depth=' + DEPTH, 'whole', keepAll);
  keepPages(await joints(), changed);
  freshness.ready = true;
}

/** Asks for a kit and keeps it, unless it is the one kept; asks again where something was learned meanwhile. */
async function take(query, name, keep) {
  for (;;) {
    const before = learnings;
    const tags = (await get('facts', 'kit')) || { name: 'kit' };
    const answer = await ask('GET', KIT + '?' + query, undefined, name && tags[name] ? { 'if-none-match': tags[name] } : {});
    if (answer.status === 401) throw new SignedOut();
    if (before !== learnings) continue;
    if (answer.ok) {
      freshness.left = answer.body.left;
      await heardOfFilming(answer.body.filmedPercent);
      await keep(answer.body.joints, name && { ...tags, [name]: answer.etag });
      changed();
    }
    return;
  }
}

async function keepOne(found) {
  await change('joints', found[0].id, (before) => record(found[0], before || { index: 0 }));
}

/** Stores what joints there are, and the tags of the kits kept; a plan that still holds stays. */
function keepAll(found, tags) {
  return write(['joints', 'facts'], ([joints, facts]) => {
    const read = joints.getAll();
    read.onsuccess = () => {
      const before = new Map(read.result.map((joint) => [joint.id, joint]));
      joints.clear();
      found.forEach((joint, index) => joints.put(record(joint, { ...before.get(joint.id), index })));
      facts.put(tags);
    };
  });
}

function record(joint, before) {
  const { plan, measure, ...rest } = joint;
  const kept = before.tree && sameBasis(before.tree.basis, joint.advice.basis) ? before.tree : null;
  const now = new Date().toISOString();
  const same = before.moved && Object.entries(rest).every(([name, value]) => JSON.stringify(before[name]) === JSON.stringify(value));
  return {
    ...before, ...rest,
    measure: { value: String(measure.value), unit: measure.unit },
    at: now,
    moved: same ? before.moved : now, // when what is known of it changed last
    tree: plan ? { first: plan, basis: joint.advice.basis } : kept,
  };
}

/** Takes in what the service said when it stored or voided a test. */
export async function learned(entry, next) {
  learnings++;
  freshness.ready = false;
  await change('joints', entry.jointId, (known) => known && {
    ...known,
    advice: next,
    at: new Date().toISOString(),
    moved: new Date().toISOString(),
    tree: entry.undone ? null : advanced(known, entry, next),
  });
  changed();
  refresh(entry.jointId); // the plans of all joints rest on every test
}

/** Joints in the order of the service. */
export async function joints() {
  return (await all('joints')).sort((a, b) => a.index - b.index);
}
