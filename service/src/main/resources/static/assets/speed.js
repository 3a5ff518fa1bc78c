// A speed from what was seen, in m/s, or ft/s where units are US, with its standard deviation in percent. The service works out the
// same in its checks.

const GRAVITY = 9.80665; // m/s², standard gravity, 3rd General Conference on Weights and Measures, 1901
const FOOT = 0.3048; // m, exactly
const LENGTH = 0.05; // relative, read off a picture or paced out
const AIM = 0.035; // radians, 2°: a joint on a stand is hardly more level
const COUNTED = 0.41; // frames, 1/√6: two instants, each uniform within a frame
const LEAST = 3; // percent; no reading is believed to be finer, and the log takes none
const LARGEST = 50; // percent; beyond it the log takes none

const positive = (...values) => values.every((value) => value > 0);
const brief = (value) => String(Number(value.toPrecision(3)));

/** A relative standard deviation as the log takes it, in percent; null where it is too large to tell anything. */
export function percent(relative) {
  const rounded = Math.max(LEAST, Math.round(1000 * relative) / 10);
  return rounded <= LARGEST ? String(rounded) : null;
}

/** Moved so far, in mm or in, within so many frames at a rate; null where one is missing. */
export function filmed(distance, frames, rate, us) {
  if (!positive(distance, frames, rate)) return null;
  return { speed: brief((distance * rate) / frames / (us ? 12 : 1000)), percent: percent(Math.hypot(LENGTH, COUNTED / frames)) };
}

/** Touched the ground so far away, falling freely from a height, both in m or ft, with drag left out; null where one is missing. */
export function thrown(distance, height, us) {
  if (!positive(distance, height)) return null;
  const gravity = us ? GRAVITY / FOOT : GRAVITY;
  const fall = Math.sqrt((2 * height) / gravity);
  const speed = distance / fall;
  return { speed: brief(speed), percent: percent(Math.hypot(LENGTH, LENGTH / 2, (AIM * speed) / (gravity * fall))) };
}

/** Measured on a film, in m/s: as the log takes it. */
export function shownOnFilm({ metresPerSecond, relative }, us) {
  return { speed: brief(us ? metresPerSecond / FOOT : metresPerSecond), percent: percent(relative) };
}

/** What is wrong with how good a speed is said to be, in words; null where nothing is, or nothing is said. */
export function uncertaintyFault(text, number, timed) {
  if (text.trim() === '') return null;
  if (!timed) return 'How good a speed is says nothing without the speed: leave it empty.';
  return number !== null && number >= LEAST && number <= LARGEST ? null : 'Type ' + LEAST + ' to ' + LARGEST + ' percent, or leave it empty.';
}
