// The parts of a setup that come in lists: cavity, contents, pins. Each row shows the fields of its kind and reads itself.

import { amount, choice, number, text } from './forms.js';
import { h } from './dom.js';

const SHAPES = [['tangent-ogive', 'tangent ogive'], ['cone', 'cone'], ['ellipsoid', 'ellipsoid'], ['haack-series', 'Haack series'], ['power-series', 'power series'], ['parabolic-series', 'parabolic series'], ['paraboloid', 'paraboloid'], ['secant-ogive', 'secant ogive']];
const PARAMETERS = { 'haack-series': 'C of the series, 0 to 1', 'power-series': 'Power, 0 to 1', 'parabolic-series': 'K of the series, 0 to 1' };
const THREADS = ['M2', 'M2.5', 'M3', 'M4', 'M5', '#2-56', '#2-64', '#4-40', '#4-48', '#6-32', '#6-40', '#8-32', '#8-36', '#10-24', '#10-32', '1/4-20', '1/4-28'];

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
    /** The value of the row; notes each control under its pointer. */
    read(pointer, noted) {
      const now = shown();
      for (const name of now) noted.set(pointer + '/' + (controls[name].path || name), controls[name]);
      return build((name) => (now.includes(name) ? controls[name].read() : undefined), kept);
    },
  };
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
    shape: choice('Inside profile', SHAPES),
    radius: amount('Ogive radius', 'length', system),
    parameter: number('Parameter'),
    innerDiameter: amount('Inner diameter', 'length', system, { fallback: jointDiameter, hint: 'As at the joint where empty.' }),
    baseDiameter: amount('Inner diameter at the base', 'length', system, { fallback: jointDiameter, hint: 'As at the joint where empty.' }),
    length: amount('Inner length', 'length', system, { hint: 'Of a nose from the tip of its profile to its base.' }),
    tipCutoff: amount('Solid tip', 'length', system, { hint: 'Length at the tip that is no cavity; may stay empty.' }),
  };
  c.shape.path = 'profile/shape';
  c.radius.path = 'profile/radius';
  c.parameter.path = 'profile/parameter';
  const shown = () => {
    if (c.kind.read() === 'cylinder') return ['kind', 'innerDiameter', 'length'];
    const shape = c.shape.read();
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
    kind: choice('Kind', [['fabric', 'parachute, streamer or cord'], ['intrusion', 'bay or coupler pushed in'], ['solid', 'solid thing']]),
    name: text('What it is'),
    depth: amount('How far it comes in', 'length', system),
    diameter: amount('Diameter', 'length', system, { fallback: () => (c.kind.read() === 'intrusion' ? jointDiameter() : undefined), hint: 'Of a bay as at the joint where empty.' }),
    length: amount('Length', 'length', system),
    volume: amount('Or its volume', 'volume', system),
    material: choice('Made of', ['nylon', 'aramid', 'polyester']),
    mass: amount('Mass', 'gear', system),
    envelopeVolume: amount('Packed volume', 'volume', system, { hint: 'Only where you would rather count it than the mass.' }),
  };
  const fields = { intrusion: ['depth', 'diameter'], solid: ['diameter', 'length', 'volume'], fabric: ['material', 'mass', 'envelopeVolume'] };
  const shown = () => ['kind', 'name', ...fields[c.kind.read()]];
  const made = row('Item', c, shown, (get) => Object.fromEntries(Object.keys(c).map((name) => [name, get(name)])));
  return filled(made, c, given);
}

/** Equal pins. A batch of the stock that a setup names stays with it as long as the thread does. */
export function pins(system, given = {}) {
  const c = { thread: choice('Thread', THREADS), count: number('How many', { whole: true }) };
  const made = row('Pins', c, () => ['thread', 'count'], (get) => {
    const same = given.thread === get('thread');
    return { thread: get('thread'), count: get('count'), batch: same ? given.batch : undefined, measured: same && !given.batch ? given.measured : undefined };
  });
  return filled(made, c, { thread: system === 'us' ? '#2-56' : 'M2.5', ...given });
}

/** A list of rows with a button to add one, and one at each row to take it out. */
export function list(title, hint, add, make, changed) {
  const rows = [];
  const holder = h('div', {});
  const insert = (given, focus) => {
    const made = make(given);
    const out = h('button', { type: 'button', onclick: () => { rows.splice(rows.indexOf(made), 1); made.element.remove(); number(); changed(); button.focus(); } }, 'Take out');
    made.element.append(out);
    rows.push(made);
    holder.append(made.element);
    number();
    if (focus) made.element.querySelector('select, input').focus();
  };
  const number = () => rows.forEach((r, i) => {
    const legend = r.element.querySelector('legend');
    legend.textContent = legend.textContent.replace(/ \d+$/, '') + ' ' + (i + 1);
    r.element.querySelector(':scope > button').setAttribute('aria-label', 'Take out: ' + legend.textContent);
  });
  const button = h('button', { type: 'button', onclick: () => { insert({}, true); changed(); } }, add);
  return {
    element: h('section', {}, h('h2', {}, title), hint ? h('p', { class: 'small' }, hint) : null, holder, button),
    insert,
    read: (pointer, noted) => rows.map((r, i) => r.read(pointer + '/' + i, noted)),
  };
}
