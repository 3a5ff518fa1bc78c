// The parts of a setup that come in lists: cavity, contents, pins. Each row shows the fields of its kind and reads itself.

import { amount, choice, number, text } from './forms.js';
import { h } from './dom.js';

/** Most used first, with the plain names beside those of textbooks, and half an outline of each, tip left, in a box of 60 by 24. */
const SHAPES = [
  ['tangent-ogive', 'ogive (tangent)', 'M2 12Q26 2 58 2V22Q26 22 2 12Z'],
  ['haack-series', 'von Kármán (Haack)', 'M2 12Q6 7 20 4.4T58 2V22Q34 21.6 20 19.6T2 12Z'],
  ['cone', 'cone', 'M2 12L58 2V22Z'],
  ['ellipsoid', 'ellipse', 'M58 2C20 2 2 7 2 12S20 22 58 22Z'],
  ['paraboloid', 'parabola (power ½)', 'M58 2C24 3 2 8 2 12S24 21 58 22Z'],
  ['power-series', 'power series', 'M2 12Q14 6 58 2V22Q14 18 2 12Z'],
  ['parabolic-series', 'parabolic series', 'M2 12Q30 3 58 2V22Q30 21 2 12Z'],
  ['secant-ogive', 'ogive (secant)', 'M2 12Q34 2 58 2V22Q34 22 2 12Z'],
];
const PARAMETERS = { 'haack-series': 'C of the series, 0 to 1', 'power-series': 'Power, 0 to 1', 'parabolic-series': 'K of the series, 0 to 1' };
export const THREADS = ['M2', 'M2.5', 'M3', 'M4', 'M5', '#2-56', '#2-64', '#4-40', '#4-48', '#6-32', '#6-40', '#8-32', '#8-36', '#10-24', '#10-32', '1/4-20', '1/4-28'];

/** A row of named controls, of which shown() lists those that count now. */
function row(title, controls, shown, build, kept) {
  const element = h('fieldset', { class: 'row' }, h('legend', {}, title), Object.values(controls).map((c) => c.element));
  const arrange = () => {
    const now = shown();
    for (const [name, c] of Object.entries(controls)) c.element.hidden = !now.includes(name);
  };
  element.addEventListener('change', arrange);
  arrange();
  return {
    element,
    arrange,
    /** What was typed, in a form that makes the same row again. */
    typed: () => Object.fromEntries(Object.entries(controls).map(([name, c]) => [name, c.typed()])),
    /** The value of the row; notes each control under its pointer. */
    read(pointer, noted) {
      const now = shown();
      for (const name of now) noted.set(pointer + '/' + (controls[name].path || name), controls[name]);
      return build((name) => (now.includes(name) ? controls[name].read() : undefined), kept);
    },
  };
}

/** A small picture of a profile. */
function profile(outline) {
  const SVG = 'http://www.w3.org/2000/svg';
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 60 24');
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('d', outline);
  path.setAttribute('fill', 'currentColor');
  svg.append(path);
  return svg;
}

function filled(made, controls, values) {
  for (const [name, value] of Object.entries(values)) if (controls[name] && value !== undefined) controls[name].set(value);
  made.arrange();
  return made;
}

/** A segment of the cavity. */
export function segment(system, jointDiameter, given = {}) {
  const c = {
    kind: choice('Kind', [['nose', 'nose'], ['cylinder', 'tube']]),
    shape: choice('Inside profile', SHAPES.map(([word, name]) => [word, name])),
    radius: amount('Ogive radius', 'length', system),
    parameter: number('Parameter', { hint: 'Of a Haack series: 0 is von Kármán, 0.333 the one for a given length and volume.' }),
    innerDiameter: amount('Inner diameter', 'length', system, { fallback: jointDiameter, hint: 'As at the joint where empty.' }),
    baseDiameter: amount('Inner diameter at the base', 'length', system, { fallback: jointDiameter, hint: 'As at the joint where empty.' }),
    length: amount('Inner length', 'length', system, { hint: 'Of a nose from tip to base.' }),
    tipCutoff: amount('Solid tip', 'length', system, { hint: 'Not hollow; may stay empty.' }),
  };
  c.shape.path = 'profile/shape';
  const tiles = h('div', { class: 'profiles', role: 'group', 'aria-label': 'Inside profile' }, SHAPES.map(([word, name, outline]) => h('button', {
    type: 'button', class: 'profile', 'data-shape': word, 'aria-pressed': 'false',
    onclick: () => { if (word === 'haack-series' && c.parameter.read() === undefined) c.parameter.set(0); c.shape.set(word); c.shape.main.dispatchEvent(new Event('change', { bubbles: true })); },
  }, profile(outline), h('span', {}, name))));
  c.shape.main.hidden = true; // the tiles press it
  c.shape.element.append(tiles);
  c.radius.path = 'profile/radius';
  c.parameter.path = 'profile/parameter';
  const shown = () => {
    if (c.kind.read() === 'cylinder') return ['kind', 'innerDiameter', 'length'];
    const shape = c.shape.read();
    for (const tile of tiles.children) tile.setAttribute('aria-pressed', String(tile.dataset.shape === shape));
    if (PARAMETERS[shape]) c.parameter.element.querySelector('label').textContent = PARAMETERS[shape];
    return ['kind', 'shape', 'baseDiameter', 'length', 'tipCutoff', ...(shape === 'secant-ogive' ? ['radius'] : []), ...(PARAMETERS[shape] ? ['parameter'] : [])];
  };
  const made = row('Segment', c, shown, (get) => {
    const profile = get('shape') && { shape: get('shape'), radius: get('radius'), parameter: get('parameter') };
    return { kind: get('kind'), profile, innerDiameter: get('innerDiameter'), baseDiameter: get('baseDiameter'), length: get('length'), tipCutoff: get('tipCutoff') };
  });
  return filled(made, c, { ...given, ...(given.profile || {}) });
}

/** Something in the compartment. */
export function content(system, jointDiameter, given = {}) {
  const c = {
    kind: choice('Kind', [['fabric', 'cloth or cord'], ['intrusion', 'pushed-in bay'], ['solid', 'solid thing']]),
    name: text('What it is', { offers: ['main parachute', 'drogue', 'harness', 'bay', 'coupler', 'motor case end', 'tracker', 'ballast'] }),
    depth: amount('How far it comes in', 'length', system),
    diameter: amount('Diameter', 'length', system, { fallback: () => (c.kind.read() === 'intrusion' ? jointDiameter() : undefined), hint: 'As at the joint where empty.' }),
    length: amount('Length', 'length', system),
    volume: amount('Or its volume', 'volume', system),
    material: choice('Made of', ['nylon', 'aramid', 'polyester']),
    mass: amount('Mass', 'gear', system),
    envelopeVolume: amount('Packed volume', 'volume', system, { hint: 'In place of the mass; may stay empty.' }),
  };
  const fields = { intrusion: ['depth', 'diameter'], solid: ['diameter', 'length', 'volume'], fabric: ['material', 'mass', 'envelopeVolume'] };
  const NAMED = { intrusion: 'bay', solid: 'solid thing', fabric: 'parachute' };
  const named = () => {
    if (c.name.read() === undefined || Object.values(NAMED).includes(c.name.read())) c.name.set(NAMED[c.kind.read()]);
  };
  c.kind.main.addEventListener('change', named);
  if (given.name === undefined) named();
  const shown = () => ['kind', 'name', ...fields[c.kind.read()]];
  const made = row('Item', c, shown, (get) => Object.fromEntries(Object.keys(c).map((name) => [name, get(name)])));
  return filled(made, c, given);
}

/** Something packed for a flight, at the envelope it has when packed. */
export function packed(system, given = {}) {
  const c = {
    name: text('What it is'),
    kind: choice('Kind', [['soft', 'soft: takes the shape of the space'], ['hard', 'hard: keeps its shape']]),
    length: amount('Length as packed', 'length', system),
    diameter: amount('Diameter as packed', 'length', system),
    volume: amount('Volume as packed', 'volume', system, { hint: 'That of a cylinder where empty.' }),
    place: choice('Rests against', [['joint', 'the joint'], ['far-end', 'the far end']]),
    material: choice('Made of', ['nylon', 'aramid', 'polyester'], { optional: 'not said: all of its volume counts as taken' }),
    mass: amount('Mass', 'gear', system),
  };
  for (const each of [c.kind, c.material]) each.element.classList.add('long');
  const soft = ['material', 'mass'];
  const shown = () => Object.keys(c).filter((name) => c.kind.read() === 'soft' || !soft.includes(name));
  const made = row('Item', c, shown, (get) => Object.fromEntries(Object.keys(c).map((name) => [name, get(name)])));
  return filled(made, c, given);
}

const stock = { batches: [], listeners: new Set() };

/** Batches of the stock that rows of pins may name; those with fewer than two pulls know no strength. */
export function offerBatches(batches) {
  stock.batches = batches.filter((batch) => batch.statistics.count >= 2);
  stock.listeners.forEach((listener) => listener());
}

/** What one pin of a batch holds: ", 78.0 N each". */
function strength(batch) {
  const mean = batch.statistics && batch.statistics.mean;
  return mean ? ', ' + mean.value + ' ' + mean.unit + ' each' : '';
}

/** Equal pins. Strength that a setup took from elsewhere stays with it as long as the thread does. */
export function pins(system, given = {}) {
  const c = {
    thread: choice('Thread', THREADS),
    count: number('How many', { whole: true }),
    batch: choice('Strength of one', [], { optional: 'nylon by its thread', hint: 'Or by the pulled pins of a batch of the stock.' }),
  };
  const same = () => given.thread === c.thread.read();
  const offer = () => {
    const now = c.batch.read() || (same() ? given.batch : undefined);
    const fitting = stock.batches.filter((batch) => batch.thread === c.thread.read());
    const gone = same() && given.batch && !fitting.some((batch) => batch.id === given.batch) ? [{ id: given.batch, name: 'the batch it had before' }] : [];
    c.batch.main.replaceChildren(c.batch.main.options[0], ...[...fitting, ...gone].map((batch) => h('option', { value: batch.id }, batch.name + strength(batch))));
    c.batch.set([...fitting, ...gone].some((batch) => batch.id === now) ? now : '');
  };
  const shown = () => ['thread', 'count', ...(c.batch.main.options.length > 1 ? ['batch'] : [])];
  c.batch.element.classList.add('long');
  const made = row('Pins', c, shown, (get) => ({
    thread: get('thread'), count: get('count'), batch: get('batch'), measured: same() && !given.batch ? given.measured : undefined,
  }));
  const typed = made.typed;
  made.typed = () => ({ ...typed(), measured: same() ? given.measured : undefined });
  c.thread.main.addEventListener('change', () => { c.batch.set(''); offer(); made.arrange(); });
  stock.listeners.add(() => { offer(); made.arrange(); });
  filled(made, c, { thread: system === 'us' ? '#2-56' : 'M2.5', ...given });
  offer();
  made.arrange();
  return made;
}

/** A list of rows with a button to add one, and one at each row to take it out. */
export function list(title, hint, add, make, changed) {
  const rows = [];
  const holder = h('div', {});
  const insert = (given, focus) => {
    const made = make(given);
    const out = h('button', { type: 'button', class: 'out', onclick: () => { rows.splice(rows.indexOf(made), 1); made.element.remove(); number(); changed(); button.focus(); } }, 'Take out');
    made.element.append(out);
    rows.push(made);
    holder.append(made.element);
    number();
    if (focus) made.element.querySelector('select, input').focus();
  };
  const number = () => rows.forEach((r, i) => {
    const legend = r.element.querySelector('legend');
    legend.textContent = legend.textContent.replace(/ \d+$/, '') + ' ' + (i + 1);
    r.element.querySelector(':scope > .out').setAttribute('aria-label', 'Take out: ' + legend.textContent);
  });
  const button = h('button', { type: 'button', onclick: () => { insert({}, true); changed(); } }, add);
  return {
    element: h('section', {}, title ? h('h2', {}, title) : null, hint ? h('p', { class: 'small' }, hint) : null, holder, button),
    insert,
    size: () => rows.length,
    replace: (values) => { rows.splice(0).forEach((r) => r.element.remove()); values.forEach((v) => insert(v)); },
    typed: () => rows.map((r) => r.typed()),
    read: (pointer, noted) => rows.map((r, i) => r.read(pointer + '/' + i, noted)),
  };
}
