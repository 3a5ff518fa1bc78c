// A joint and its setup: typed once, checked by the service while it is typed, drawn to scale.

import { announce, h } from './dom.js';
import { NoAnswer, ask, part, picture } from './api.js';
import { brief, near, never } from './decimal.js';
import { amount, choice, json, showFaults, showWarnings, text } from './forms.js';
import { keep } from './half-typed.js';
import { content, list, offerBatches, pins, segment } from './rows.js';
import { newKey } from './outbox.js';

const USUAL_MEASURE = '0.05'; // g, where none is typed
const PAUSE = 450; // ms without typing before the service is asked

const root = document.getElementById('setup');
const { airframe, joint, units } = root.dataset;
const result = document.getElementById('result');
const sum = document.getElementById('sum');
const trouble = h('div', { class: 'fault-list', role: 'alert' });
const key = newKey();
const kept = keep(joint ? 'setup-' + joint : 'setup-new-' + airframe);
let etag = null;
let asked = 0;
let timer = 0;
let lastControls = new Map();

const start = joint ? await existing() : { setup: {} };
const before = await kept.read();
const given = before ? before.setup : start.setup;
const about = joint ? {} : {
  name: text('Name of the joint', { hint: 'Such as "nose to bay".', offers: ['nose to bay', 'bay to booster', 'nose to payload tube', 'nose to booster', 'payload tube to booster'] }),
  event: choice('What parts here in flight', [['main', 'main'], ['drogue', 'drogue'], ['other', 'something else']]),
};
const used = await lately();
const diameter = amount('Inner diameter at the joint', 'length', units, { hint: 'Such as 98 mm or 3 7/8 in.', offers: used.diameters });
const own = () => diameter.read();
const plain = {
  shoulder: amount('Length of the shoulder', 'length', units, { hint: 'How far the parts engage.', offers: used.shoulders }),
  forwardMass: amount('Mass forward of the joint', 'body', units, { offers: used.masses }),
  aftMass: amount('Mass aft of the joint', 'body', units, { offers: used.masses }),
  fitForce: amount('Pull that parts the joint without pins', 'force', units, { hint: 'A luggage scale measures it.', offers: used.fits }),
  fitForceUncertainty: amount('How well you know that pull', 'force', units, { hint: 'One standard deviation.' }),
};
const powder = choice('Powder', [], { optional: 'fine-grain black powder' });
const limit = choice('Limit of the structure', [['gaugePressure', 'a gauge pressure'], ['separationSpeed', 'a separation speed']], { optional: 'none given: three times the threshold pressure' });
const limits = { gaugePressure: amount('Highest gauge pressure', 'pressure', units), separationSpeed: amount('Highest separation speed', 'speed', units) };
const measure = amount('Step of your scale or measure', 'powder', units, { hint: '0.05 g where empty.' });
const note = text(joint ? 'Why this setup differs from the last' : 'Note', { most: 500, rows: 2 });
const cavity = list('The hollow that the charge fills', 'From its closed far end to the joint.', 'Add a segment', (v) => segment(units, own, v), later);
const contents = list(null, 'All that takes room from the gas.', 'Add an item', (v) => content(units, own, v), later);
const pinSets = list('Shear pins', 'None for a friction fit.', 'Add pins', (v) => pins(units, v), later);
const button = h('button', { class: 'main-action' }, joint ? 'Keep as new setup' : 'Store the joint');

for (const c of [powder, limit]) c.element.classList.add('long');
note.element.classList.add('whole');
fill();
root.replaceChildren(before ? kept.notice() : '', h('form', { novalidate: true, onsubmit: submit, oninput: touched, onchange: touched },
  step(1, 'What parts here', [...Object.values(about), diameter].map((c) => c.element), cavity.element),
  step(2, 'What holds it', [plain.fitForce, plain.fitForceUncertainty, plain.shoulder].map((c) => c.element), pinSets.element, pinsAgain()),
  step(3, 'What is inside', [], contents.element),
  step(4, 'Powder and measure', [powder, measure, limit, ...Object.values(limits), plain.forwardMass, plain.aftMass, note].map((c) => c.element)),
  trouble, button));
arrange();
stock();
check();
if (joint && location.hash === '#limit') { // where nothing but an unstated limit is in the way
  limit.element.scrollIntoView({ block: 'center' });
  limit.main.focus();
}

/** One of the four parts of the form. */
function step(number, title, fields, ...more) {
  return h('section', { class: 'card step', 'aria-labelledby': 'step-' + number },
    h('h2', { id: 'step-' + number }, h('span', { class: 'seat-letter', 'aria-hidden': 'true' }, String(number)), title),
    fields.length ? h('div', { class: 'paired' }, fields) : null, more);
}

/** Pins of the other joints of this airframe, each a press away. */
function pinsAgain() {
  return h('div', { class: 'actions again' }, used.pins.map(({ words, sets }) => h('button', { type: 'button', onclick: () => { pinSets.replace(sets); later(); } }, words)));
}

/** Values used at other joints of this airframe, to be offered. */
async function lately() {
  const answer = await ask('GET', '/api/airframes/' + airframe + '/joints').catch(() => null);
  const setups = answer && answer.ok ? (answer.body.items || []).map((item) => item.setup).filter(Boolean) : [];
  const each = (name) => [...new Set(setups.map((s) => s[name]).filter(Boolean).map((q) => q.value + ' ' + q.unit))];
  const pins = new Map();
  for (const item of answer && answer.ok ? answer.body.items || [] : []) {
    const sets = (item.setup && item.setup.pins) || [];
    const words = sets.map((set) => set.count + ' × ' + set.thread + (set.measured ? ' (pulled)' : '')).join(', ');
    if (words && item.id !== joint && !pins.has(words)) pins.set(words, { words: words + ', as at ' + item.name, sets });
  }
  return { pins: [...pins.values()], diameters: each('innerDiameter'), shoulders: each('shoulder'), fits: each('fitForce'), masses: [...new Set([...each('forwardMass'), ...each('aftMass')])] };
}

async function existing() {
  const response = await fetch('/api/joints/' + joint, { headers: { accept: 'application/json' } });
  etag = response.headers.get('etag');
  return response.json();
}

function fill() {
  diameter.set(given.innerDiameter);
  for (const [name, c] of Object.entries(plain)) c.set(given[name]);
  for (const [name, c] of Object.entries(about)) if (before) c.set(before.about[name]);
  const ceiling = given.ceiling || {};
  limit.set(given.limit || Object.keys(ceiling)[0]);
  for (const [name, c] of Object.entries(limits)) c.set(ceiling[name]);
  if (before) note.set(given.note);
  measure.set(given.measure);
  if (given.powder) powder.set(given.powder);
  (given.cavity || [{}]).forEach((v) => cavity.insert(v));
  (given.contents || []).forEach((v) => contents.insert(v));
  (given.pins || [{}]).forEach((v) => pinSets.insert(v));
}

/** All that is typed, half or whole, as fill() takes it back. */
function typed() {
  const each = (controls) => Object.fromEntries(Object.entries(controls).map(([name, c]) => [name, c.typed()]));
  return {
    about: each(about),
    setup: {
      ...each({ innerDiameter: diameter, ...plain, powder, limit, measure, note }), ceiling: each(limits),
      cavity: cavity.typed(), contents: contents.typed(), pins: pinSets.typed(),
    },
  };
}

async function stock() {
  const pinBatches = await ask('GET', '/api/pin-batches?limit=200').catch(() => null);
  if (pinBatches && pinBatches.ok) offerBatches(pinBatches.body.items);
  const answer = await ask('GET', '/api/powders?limit=200').catch(() => null);
  if (!answer || !answer.ok) return;
  const select = powder.main;
  for (const item of answer.body.items) {
    if (!item.standard && ![...select.options].some((o) => o.value === item.name)) select.append(h('option', { value: item.name }, item.name));
  }
}

function arrange() {
  for (const [name, c] of Object.entries(limits)) c.element.hidden = limit.read() !== name;
}

/** The body as the API takes it, and which control stands for which pointer. */
function collect() {
  const controls = new Map();
  const take = (name, c) => {
    controls.set('/' + name, c);
    return c.read();
  };
  const setup = { innerDiameter: take('innerDiameter', diameter) };
  for (const [name, c] of Object.entries(plain)) setup[name] = take(name, c);
  setup.cavity = cavity.read('/cavity', controls);
  setup.contents = contents.read('/contents', controls);
  setup.pins = pinSets.read('/pins', controls);
  setup.powder = take('powder', powder);
  const which = limit.read();
  if (which) setup.ceiling = { [which]: take('ceiling/' + which, limits[which]) };
  setup.measure = take('measure', measure);
  setup.note = take('note', note);
  const named = Object.fromEntries(Object.entries(about).map(([name, c]) => [name, take(name, c)]));
  lastControls = controls;
  return { setup, named, controls };
}

/** Keeps what is typed on this phone: as fill() takes it back, and as the service takes it. */
function store() {
  const { setup } = collect();
  kept.write({ ...typed(), body: json(setup) });
}

function touched(event) {
  store(); // a row added just now has controls that were not there at the last check
  for (const c of lastControls.values()) if (c.element.contains(event.target)) c.touched = true;
  arrange();
  later();
}

function later() {
  if (lastControls.size) store();
  clearTimeout(timer);
  timer = setTimeout(check, PAUSE);
}

async function check() {
  const mine = ++asked;
  const { setup, controls } = collect();
  const body = json({ setup });
  try {
    const answer = joint ? await part('/joints/' + joint + '/tried-change', body, 'tried') : await ask('POST', '/api/checks/setup?units=' + units, body);
    if (mine !== asked) return;
    if (answer.status === 401) return say('Sign in again to have it worked out.');
    const homeless = showFaults(controls, answer.ok ? [] : answer.body.errors || [], false);
    showWarnings(fields(controls), answer.ok ? warningsOf(answer.body) : []);
    trouble.replaceChildren();
    const wrong = answer.ok ? null : (answer.body.errors || []).find((e) => e.code !== 'missing');
    if (!answer.ok) return say(homeless.length ? 'Not yet: ' + homeless.join('; ') : wrong ? 'It cannot be worked out yet: ' + wrong.detail : 'Not complete yet: the volume, pressure and charge appear here as soon as everything needed is typed.');
    const svg = await picture('/api/checks/setup?units=' + units, body);
    if (mine !== asked) return;
    if (joint) compare(answer.body, svg, controls);
    else show(answer.body, svg, controls, setup.measure ? String(setup.measure.value.text) : USUAL_MEASURE);
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    if (mine === asked) say('The service cannot be reached just now, so nothing can be worked out.');
  }
}

/** A word that opens its sentence, which the page brings. */
function term(slug, name) {
  return h('button', { type: 'button', class: 'term', popovertarget: 'about-' + slug }, name);
}

function say(words) {
  result.replaceChildren(h('p', {}, words));
  sum.textContent = '';
}

const named = (quantity) => brief(quantity.value) + ' ' + quantity.unit.replace(/([a-z])2$/, '$1²').replace(/([a-z])3$/, '$1³');

const drawing = (svg) => [svg ? h('figure', {}, svg) : '', h('p', { class: 'small' }, 'To scale. Everything but what is pushed in is drawn at the volume it takes from the gas, not as packed.')];

/** Which field a warning is about; what has none stands under the results. */
const ABOUT = {
  'no-shoulder': '/shoulder', 'short-shoulder': '/shoulder', 'no-masses': '/forwardMass', 'guessed-fit': '/fitForceUncertainty',
  'no-pins': '/fitForce', 'handbook-pin-strength': '/pins/0/thread', 'area-unlike-cavity': '/innerDiameter', 'no-structural-limit': 'limit', 'default-ceiling': 'limit',
};

/** The controls by the codes of warnings about them. */
function fields(controls) {
  const at = new Map([...controls, ['limit', limit]]);
  return new Map(Object.entries(ABOUT).map(([code, pointer]) => [code, at.get(pointer)]).filter(([, c]) => c));
}

/** Warnings of an answer: those of a check, or those in the list of a tried change. */
function warningsOf(body) {
  return body.warnings || [...body.querySelectorAll('[data-code]')].map((item) => ({ code: item.dataset.code, text: item.textContent }));
}

/** What the change would do, beside the setup in force; a warning that stands at its field is not told again. */
function compare(tried, svg, controls) {
  const known = fields(controls);
  for (const item of tried.querySelectorAll('[data-code]')) if (known.has(item.dataset.code)) item.remove();
  for (const list of tried.querySelectorAll('ul.notice')) if (!list.children.length) list.remove();
  result.replaceChildren(...drawing(svg), tried);
  sum.textContent = tried.querySelector('.answer').textContent;
  const beside = document.getElementById('beside');
  beside.href = '/joints/' + joint + '/compare' + (tried.dataset.changed ? '?with=' + joint + '@' + root.dataset.revision + '&with=tried' : '');
  beside.textContent = tried.dataset.changed ? 'This change beside other setups' : 'Setups side by side';
}

function show(found, svg, controls, step) {
  const others = found.warnings.filter((w) => !fields(controls).has(w.code));
  const handbook = near(found.handbookCharge.value, step) + ' ' + found.handbookCharge.unit;
  const lines = [
    ['free-volume', 'Free volume', named(found.freeVolume)], ['area', 'Area', named(found.area)], ['retention', 'Retention', named(found.retention)],
    ['threshold-pressure', 'Threshold pressure', named(found.thresholdPressure)], ['handbook-charge', 'Handbook charge', handbook + ', ± ' + Math.round(found.uncertainty * 100) + ' %'],
    ['ceiling', 'Ceiling', never(found.ceiling.value, step) + ' ' + found.ceiling.unit],
  ];
  sum.textContent = named(found.freeVolume) + ', ' + named(found.thresholdPressure) + ', handbook charge ' + handbook + ' (an estimate)';
  result.replaceChildren(
    ...drawing(svg),
    h('dl', { class: 'results' }, lines.map(([slug, name, value]) => h('div', {}, h('dt', {}, term(slug, name)), h('dd', {}, value)))),
    h('p', {}, 'The handbook charge is an estimate, not a charge to fire or to fly.'),
    others.length ? h('ul', { class: 'notice' }, others.map((w) => h('li', {}, w.text))) : '',
    h('div', { class: 'cautions', role: 'note', 'aria-label': 'Cautions' }, h('ul', {}, found.cautions.map((c) => h('li', {}, c.text)))));
}

async function submit(event) {
  event.preventDefault();
  const { setup, named: first, controls } = collect();
  button.disabled = true;
  try {
    const answer = joint
      ? await ask('PUT', '/api/joints/' + joint + '/setup', json(setup), { 'If-Match': etag })
      : await ask('POST', '/api/airframes/' + airframe + '/joints', json({ ...first, setup }), { 'Idempotency-Key': key });
    if (answer.ok) {
      await kept.drop();
      location.assign('/joints/' + (joint || answer.body.id) + '/plan' + (joint ? '' : '?stored'));
      return;
    }
    if (answer.status === 401) return refuse('Sign in again, in another tab, and then store it.', []);
    if (answer.status === 412) return refuse('Not stored: this setup was changed elsewhere since the page was opened. Open it again; what you typed stays here.', []);
    refuse(answer.body.title + '. ' + (answer.body.errors ? '' : answer.body.detail), showFaults(controls, answer.body.errors || [], true));
  } catch (failure) {
    if (!(failure instanceof NoAnswer)) throw failure;
    refuse('Not stored: the service cannot be reached. What you typed stays on this phone.', []);
  } finally {
    button.disabled = false;
  }
}

function refuse(words, more) {
  trouble.replaceChildren(h('p', {}, words), more.length ? h('ul', {}, more.map((m) => h('li', {}, m))) : '');
  announce(words);
  const wrong = root.querySelector('[aria-invalid=true]');
  if (wrong) wrong.focus();
}
