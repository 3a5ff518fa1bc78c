// Finding again in a frame what was tapped in another: correlation in a window. Knows nothing of a page.

const ALIKE = 0.7; // correlation below which it is something else

/** A picture in grey from the pixels of a canvas. */
export function grey({ width, height, data }) {
  const values = new Float32Array(width * height);
  for (let i = 0; i < values.length; i++) values[i] = 0.299 * data[4 * i] + 0.587 * data[4 * i + 1] + 0.114 * data[4 * i + 2];
  return { width, height, values };
}

/** The window of a picture about a place, its mean taken off; null where it does not lie in the picture or shows nothing. */
export function windowAt(picture, x, y, half) {
  const [left, top] = [Math.round(x) - half, Math.round(y) - half];
  const size = 2 * half + 1;
  if (left < 0 || top < 0 || left + size > picture.width || top + size > picture.height) return null;
  const values = new Float32Array(size * size);
  let sum = 0;
  for (let j = 0; j < size; j++) {
    for (let i = 0; i < size; i++) {
      values[j * size + i] = picture.values[(top + j) * picture.width + left + i];
      sum += values[j * size + i];
    }
  }
  const mean = sum / values.length;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    values[i] -= mean;
    squares += values[i] * values[i];
  }
  return squares > values.length ? { half, values, norm: Math.sqrt(squares), x: Math.round(x), y: Math.round(y) } : null;
}

function likeness(pattern, other) {
  if (!other) return -1;
  let sum = 0;
  for (let i = 0; i < pattern.values.length; i++) sum += pattern.values[i] * other.values[i];
  return sum / (pattern.norm * other.norm);
}

/** How far a peak lies beside the middle one of three values, by a parabola. */
const beside = (before, at, after) => {
  const bend = before - 2 * at + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
};

/**
 * Where in a picture a pattern lies.
 *
 * @param guess where it is looked for first, and reach how far from there
 * @return the place of what was in the middle of the pattern, and how much alike it is; null where nothing is alike
 */
export function foundAgain(picture, pattern, guess, reach) {
  const at = (x, y) => likeness(pattern, windowAt(picture, x, y, pattern.half));
  let best = { x: 0, y: 0, alike: ALIKE };
  let any = false;
  for (let y = Math.round(guess.y - reach.y); y <= guess.y + reach.y; y++) {
    for (let x = Math.round(guess.x - reach.x); x <= guess.x + reach.x; x++) {
      const alike = at(x, y);
      if (alike > best.alike) {
        best = { x, y, alike };
        any = true;
      }
    }
  }
  if (!any) return null;
  const { x, y, alike } = best;
  return { x: x + beside(at(x - 1, y), alike, at(x + 1, y)), y: y + beside(at(x, y - 1), alike, at(x, y + 1)), alike };
}
