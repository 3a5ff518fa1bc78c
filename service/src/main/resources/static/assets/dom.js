// Making elements. Text only ever becomes text, never markup.

const SVG = 'http://www.w3.org/2000/svg';

/** An element with attributes and children; strings become text, null and false are left out. */
export function h(name, attributes, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes || {})) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith('on')) element.addEventListener(key.slice(2), value);
    else if (key === 'value' || key === 'checked') element[key] = value;
    else element.setAttribute(key, value === true ? '' : value);
  }
  append(element, children);
  return element;
}

function append(element, children) {
  for (const child of children.flat(Infinity)) {
    if (child === null || child === undefined || child === false) continue;
    element.append(child);
  }
}

/** The mark of an outcome; the word beside it is the caller's. */
export function mark(outcome) {
  return symbol(outcome, 'mark', '0 0 40 20');
}

/** A sign beside words. */
export function sign(name) {
  return symbol(name, 'sign', '0 0 26 26');
}

function symbol(name, css, box) {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', css);
  svg.setAttribute('viewBox', box);
  svg.setAttribute('aria-hidden', 'true');
  const use = document.createElementNS(SVG, 'use');
  use.setAttribute('href', '/assets/marks.svg#' + name);
  svg.append(use);
  return svg;
}

/** A word that opens its sentence, which the page holds. */
export function term(slug, words) {
  return h('button', { type: 'button', class: 'term', popovertarget: 'about-' + slug }, words);
}

/** A picture that the service drew, as an element; texts in it were escaped where it was drawn. */
export function parsed(svg) {
  return document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
}

/** Says something to those who listen instead of looking. */
export function announce(words) {
  const live = document.getElementById('live');
  if (live) live.textContent = words;
}

/** A time as people here read it. */
export function clock(iso) {
  const time = new Date(iso);
  const today = new Date().toDateString() === time.toDateString();
  const hours = time.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  return today ? hours : time.toLocaleDateString() + ', ' + hours;
}
