// A speed from what was seen, in m/s, or ft/s where units are US. The service works out the same in its checks, with the uncertainty.

const GRAVITY = 9.80665; // m/s², standard gravity, 3rd General Conference on Weights and Measures, 1901
const FOOT = 0.3048; // m, exactly

const positive = (...values) => values.every((value) => value > 0);
const brief = (value) => String(Number(value.toPrecision(3)));

/** Moved so far, in mm or in, within so many frames at a rate; null where one is missing. */
export function filmed(distance, frames, rate, us) {
  return positive(distance, frames, rate) ? brief((distance * rate) / frames / (us ? 12 : 1000)) : null;
}

/** Touched the ground so far away, falling freely from a height, both in m or ft, with drag left out; null where one is missing. */
export function thrown(distance, height, us) {
  const fall = Math.sqrt((2 * height) / (us ? GRAVITY / FOOT : GRAVITY));
  return positive(distance, height) ? brief(distance / fall) : null;
}
