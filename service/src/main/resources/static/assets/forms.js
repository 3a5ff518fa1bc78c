// Forms that speak the words of the API: quantities with their unit, digits as typed, faults beside their field.

import { parse } from './decimal.js';
import { split } from './typed.js';
import { h } from './dom.js';
import { wordsOf } from './faults.js';

/** Units of a dimension, the usual one of each system first. */
const UNITS = {
  metric: { length: ['mm', 'cm', 'm', 'in'], gear: ['g', 'kg', 'oz'], body: ['kg', 'g', 'lb'], powder: ['g', 'gr'], force: ['N', 'lbf'], pressure: ['kPa', 'bar', 'psi'], speed: ['m/s', 'ft/s'], volume: ['mL', 'L', 'in3'], energy: ['kJ/kg', 'J/kg', 'ft.lbf/lb'] },
  us: { length: ['in', 'ft', 'mm', 'cm'], gear: ['oz', 'lb', 'g'], body: ['lb', 'oz', 'kg'], powder: ['g', 'gr'], force: ['lbf', 'N'], pressure: ['psi', 'kPa', 'bar'], speed: ['ft/s', 'm/s'], volume: ['in3', 'mL', 'L'], energy: ['kJ/kg', 'J/kg', 'ft.lbf/lb'] },
};

let made = 0;

/** A number that is written as it was typed. */
class Digits {
  constructor(text) { this.text = text; }
}

/** JSON of plain values, with numbers digit by digit. Fields that are undefined are left out. */
export function json(value) {
  if (value instanceof Digits) return value.text;
  if (Array.isArray(value)) return '[' + value.map(json).join(',') + ']';
  if (value && typeof value === 'object') {
    return '{' + Object.entries(value).filter(([, v]) => v !== undefined).map(([k, v]) => JSON.stringify(k) + ':' + json(v)).join(',') + '}';
  }
  return JSON.stringify(value);
}

/**
 * A labelled place for a value: element, read(), set(value), and typed(), which set() takes back as it was, half typed or not.
 * The fault under it is filled by showFaults.
 */
function control(label, inputs, main, read, set, hint, typed = () => main.value) {
  const id = 'c' + ++made;
  main.id = id;
  main.setAttribute('aria-describedby', id + '-fault');
  const fault = h('p', { class: 'fault', id: id + '-fault' });
  const element = h('div', { class: 'field' }, h('label', { for: id }, label), hint ? h('p', { class: 'small' }, hint) : null, inputs, fault);
  return { element, main, fault, read, set, typed, touched: false };
}

/** Values used before, to choose from; null where there are none. */
function offered(offers) {
  return offers.length ? h('datalist', { id: 'offers-' + ++made }, offers.map((o) => h('option', { value: o }))) : null;
}

/** Free text. */
export function text(label, { most = 80, rows, hint, offers = [] } = {}) {
  const list = offered(offers);
  const input = rows ? h('textarea', { rows: String(rows), maxlength: String(most) }) : h('input', { maxlength: String(most), autocomplete: 'off', list: list && list.id });
  return control(label, list ? [input, list] : input, input, () => (input.value.trim() === '' ? undefined : input.value.trim()), (v) => { input.value = v || ''; }, hint);
}

/** One of some words; options are words or [word, label]. */
export function choice(label, options, { optional, hint } = {}) {
  const pairs = options.map((o) => (Array.isArray(o) ? o : [o, o]));
  const select = h('select', {}, optional ? h('option', { value: '' }, optional) : null, pairs.map(([word, name]) => h('option', { value: word }, name)));
  return control(label, select, select, () => select.value || undefined, (v) => {
    if (v && ![...select.options].some((o) => o.value === v)) select.append(h('option', { value: v }, v));
    select.value = v || (optional ? '' : pairs[0][0]);
  }, hint);
}

/** A number with no unit. */
export function number(label, { whole, hint } = {}) {
  const input = h('input', { inputmode: whole ? 'numeric' : 'decimal', autocomplete: 'off' });
  return control(label, input, input, () => digits(input.value), (v) => { input.value = v === undefined ? '' : String(v); }, hint);
}

/**
 * A number with its unit; where it is empty it may stand for another. A unit typed with the number, "3 7/8 in" or "98mm", counts
 * at once and moves into its list when the field is left.
 */
export function amount(label, dimension, system, { fallback, hint, offers = [] } = {}) {
  const list = offered(offers);
  const input = h('input', { inputmode: 'decimal', autocomplete: 'off', list: list && list.id });
  const units = UNITS[system][dimension];
  const unit = h('select', { 'aria-label': 'Unit of: ' + label }, units.map((u) => h('option', { value: u }, u)));
  const read = () => {
    if (input.value.trim() === '') return fallback ? fallback() : undefined;
    const typed = split(input.value, units);
    return typed ? { value: digits(typed.value), unit: typed.unit || unit.value } : { value: digits(input.value), unit: unit.value };
  };
  input.addEventListener('change', () => {
    const typed = split(input.value, units);
    if (!typed || parse(input.value) !== null) return;
    input.value = typed.value;
    if (typed.unit) unit.value = typed.unit;
  });
  const set = (v) => {
    input.value = v ? String(v.value) : '';
    if (v && ![...unit.options].some((o) => o.value === v.unit)) unit.append(h('option', { value: v.unit }, v.unit));
    if (v) unit.value = v.unit;
  };
  return control(label, h('div', { class: 'amount' }, input, unit, list), input, read, set, hint, () => ({ value: input.value, unit: unit.value }));
}

/** What was typed as a number; something else goes as text, so that the service says what is wrong with it. */
function digits(typed) {
  if (typed.trim() === '') return undefined;
  const found = parse(typed);
  return found === null ? typed.trim() : new Digits(found);
}

/** What a list of rows is called where no row has the fault. */
const PLACES = { cavity: 'The hollow', contents: 'What is inside', pins: 'Shear pins', compartments: 'What is packed', items: 'What is packed' };

function place(pointer) {
  const last = pointer.split('/').filter((part) => part in PLACES).pop();
  return last ? PLACES[last] + ': ' : '';
}

/**
 * Shows faults beside their fields.
 *
 * @param controls by pointer
 * @param faults as the service gave them
 * @param all whether fields that nobody touched yet are marked too
 * @returns what no field could be found for
 */
export function showFaults(controls, faults, all) {
  for (const c of controls.values()) mark(c, '');
  const homeless = [];
  for (const fault of faults) {
    const at = owner(controls, fault.pointer.replace(/^\/setup(?=\/|$)/, ''));
    const words = wordsOf(fault);
    if (!at) homeless.push(place(fault.pointer) + words);
    else if (all || at.touched) mark(at, (at.fault.textContent ? at.fault.textContent + '; ' : '') + words);
  }
  return homeless;
}

/**
 * Shows what to mind beside the fields that it is about.
 *
 * @param fields controls by the codes of warnings
 * @param warnings with code and text; those of no field are left to the caller
 */
export function showWarnings(fields, warnings) {
  const said = new Map();
  for (const warning of warnings) {
    const at = fields.get(warning.code);
    if (at) said.set(at, [...(said.get(at) || []), warning.text]);
  }
  for (const c of new Set(fields.values())) {
    const old = c.element.querySelector('.mind');
    if (old) old.remove();
    if (said.has(c)) c.element.append(h('p', { class: 'mind' }, said.get(c).join(' ')));
  }
}

function mark(c, words) {
  c.fault.textContent = words;
  c.main.setAttribute('aria-invalid', words ? 'true' : 'false');
}

function owner(controls, pointer) {
  if (controls.has(pointer)) return controls.get(pointer);
  const paths = [...controls.keys()];
  const above = paths.filter((p) => pointer.startsWith(p + '/')).sort((a, b) => b.length - a.length)[0];
  const below = paths.find((p) => p.startsWith(pointer + '/'));
  return controls.get(above) || (pointer && below && controls.get(below)) || null;
}
