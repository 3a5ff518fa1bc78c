// What this phone knows of joints: names, the service's last advice, and the tree planned from it.

import { all, change, changed, get, write } from './store.js';
import { NoAnswer, SignedOut, ask, read } from './api.js';
import { advanced, sameBasis } from './plan.js';

const DEPTH = 4;

/** Where the last refresh stands: 'asking', 'fresh', 'unreachable', 'signed-out' or null. */
export const freshness = { state: null };

let refreshing = null;

/** Reads airframes, joints and plans anew; one refresh runs at a time. */
export function refresh(firstJoint) {
  if (!refreshing) {
    freshness.state = 'asking';
    refreshing = reading(firstJoint)
      .then(() => { freshness.state = 'fresh'; })
      .catch((failure) => {
        if (failure instanceof SignedOut) freshness.state = 'signed-out';
        else if (failure instanceof NoAnswer) freshness.state = 'unreachable';
        else throw failure;
      })
      .finally(() => {
        refreshing = null;
        changed();
      });
  }
  return refreshing;
}

async function reading(firstJoint) {
  if (firstJoint && (await get('joints', firstJoint))) await refreshPlan(firstJoint);
  const found = [];
  for (const airframe of await everyAirframe()) {
    const list = await read('/api/airframes/' + airframe.id + '/joints');
    for (const joint of (list && list.items) || []) found.push({ airframe, joint });
  }
  await keep(found);
  changed();
  const order = found.map((f) => f.joint.id).sort((a, b) => (b === firstJoint) - (a === firstJoint));
  for (const id of order) await refreshPlan(id);
}

async function everyAirframe() {
  const items = [];
  let cursor = null;
  do {
    const page = await read('/api/airframes?limit=200' + (cursor ? '&cursor=' + encodeURIComponent(cursor) : ''));
    if (!page) break;
    items.push(...page.items);
    cursor = page.next;
  } while (cursor);
  return items;
}

/** Stores what joints there are; what is known of their plans stays. */
async function keep(found) {
  await write(['joints'], ([joints]) => {
    const read = joints.getAll();
    read.onsuccess = () => {
      const before = new Map(read.result.map((joint) => [joint.id, joint]));
      joints.clear();
      found.forEach(({ airframe, joint }, index) => {
        const measure = (joint.setup && joint.setup.measure) || { value: 0.05, unit: 'g' };
        joints.put({
          ...before.get(joint.id), id: joint.id, index, airframeId: airframe.id, airframe: airframe.name, units: airframe.units,
          name: joint.name, event: joint.event, measure: { value: String(measure.value), unit: measure.unit },
        });
      });
    };
  });
}

/** Reads the advice of a joint, and its tree where that rests on something else than the one kept. */
async function refreshPlan(id) {
  const advice = await read('/api/joints/' + id + '/next-charge');
  if (!advice) return;
  const joint = await keepAdvice(id, advice);
  changed();
  if (joint && !(joint.tree && sameBasis(joint.tree.basis, advice.basis))) await refreshTree(id);
}

function keepAdvice(id, advice) {
  return change('joints', id, (joint) => joint && { ...joint, advice, at: new Date().toISOString() });
}

async function refreshTree(id) {
  const ladder = await read('/api/joints/' + id + '/ladder?depth=' + DEPTH);
  if (!ladder) return;
  await change('joints', id, (joint) => joint && { ...joint, tree: { first: ladder.first, basis: ladder.basis } });
  changed();
}

/** Takes in what the service said when it stored or voided a test. */
export async function learned(entry, next) {
  const joint = await change('joints', entry.jointId, (known) => known && {
    ...known,
    advice: next,
    at: new Date().toISOString(),
    tree: entry.undone ? null : advanced(known, entry, next),
  });
  changed();
  if (joint) refreshTree(entry.jointId).catch(() => {}); // the tree kept stays until the next refresh
}

/** Joints in the order of the service. */
export async function joints() {
  return (await all('joints')).sort((a, b) => a.index - b.index);
}
