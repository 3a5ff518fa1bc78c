// The speed of a part that leaves, from its places in the frames of a film: a line, or a parabola where one is seen, through place
// against time by least squares, and how good that is. Knows nothing of a page.

const BELIEVED = 4; // taps that the stated accuracy of a tap is worth beside those made
const SEEN = 2.5; // standard deviations by which a bend must differ from nothing to be believed
const BENDS = 5; // frames from which on a bend is looked for
const FEWEST = 3; // frames
const RATE = 0.01; // relative: what a phone calls 240 is not quite 240
const LENGTH = 0.01; // relative: a diameter measured by tape
const SQUARE = 0.02; // relative: a film taken up to ten degrees askew, and a length not quite as far away as the edge
const BACKWARDS = 4; // standard deviations of a tap by which an edge may seem to go back
const SLOWEST = 0.2; // m/s
const FASTEST = 200; // m/s
const LARGEST = 0.5; // relative; beyond it the log takes no speed
const NEARLY = 0.03; // relative

/** Rates that a film may be taken at, in frames a second. */
export const RATES = [24, 25, 30, 50, 60, 100, 120, 240, 480, 960];

/** Why there is no speed, in words. */
export class NoSpeed extends Error {}

/** Frames a second that a file plays at, from the times of frames shown, in seconds; null where too few were. */
export function playsAt(times) {
  const gaps = times.slice(1).map((time, i) => time - times[i]).filter((gap) => gap > 0).sort((a, b) => a - b);
  if (gaps.length < 3) return null;
  const rate = 1 / gaps[Math.floor((gaps.length - 1) / 4)]; // a frame that was left out makes a gap longer, nothing makes it shorter
  return usual(rate);
}

/** The rate that cameras have, where one is nearly that; else the whole number next to it. */
export function usual(rate) {
  return RATES.find((known) => Math.abs(rate / known - 1) < NEARLY) || Math.round(rate);
}

/** Seconds that really passed while so many passed in a file that plays at one rate and was taken at another. */
export const really = (seconds, plays, taken) => (seconds * plays) / taken;

/** Metres a pixel of the film, from two taps on the ends of a known length. @throws NoSpeed in words */
export function scaleOf(taps, metres) {
  if (taps.length < 2) throw new NoSpeed('Tap both ends of a length that you know.');
  if (!(metres > 0)) throw new NoSpeed('Type the length between the two taps.');
  const pixels = Math.hypot(taps[1].x - taps[0].x, taps[1].y - taps[0].y);
  if (!(pixels >= 10)) throw new NoSpeed('The two taps on the known length lie on one another: tap one end and the other.');
  return { metres: metres / pixels, pixels };
}

/** The direction in which places lie, from the first toward the last: the principal axis of their scatter. */
function direction(taps) {
  const n = taps.length;
  const x = taps.reduce((sum, tap) => sum + tap.x, 0) / n;
  const y = taps.reduce((sum, tap) => sum + tap.y, 0) / n;
  let [xx, xy, yy] = [0, 0, 0];
  for (const tap of taps) {
    xx += (tap.x - x) ** 2;
    xy += (tap.x - x) * (tap.y - y);
    yy += (tap.y - y) ** 2;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const along = (taps[n - 1].x - taps[0].x) * Math.cos(angle) + (taps[n - 1].y - taps[0].y) * Math.sin(angle);
  const sign = along < 0 ? -1 : 1;
  return { x: sign * Math.cos(angle), y: sign * Math.sin(angle) };
}

/** Least squares of place = a + v t (+ k t²), t from the first place on. */
function leastSquares(places, terms) {
  const powers = places.map(({ t }) => Array.from({ length: terms }, (_, i) => t ** i));
  const matrix = Array.from({ length: terms }, (_, i) => Array.from({ length: terms }, (_, j) => powers.reduce((sum, p) => sum + p[i] * p[j], 0)));
  const inverse = inverted(matrix);
  const right = Array.from({ length: terms }, (_, i) => powers.reduce((sum, p, n) => sum + p[i] * places[n].s, 0));
  const found = inverse.map((row) => row.reduce((sum, value, j) => sum + value * right[j], 0));
  const squares = places.reduce((sum, { s }, n) => sum + (s - powers[n].reduce((at, p, i) => at + p * found[i], 0)) ** 2, 0);
  return { found, inverse, squares };
}

/** The inverse of a small symmetric positive matrix, by elimination. */
function inverted(matrix) {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < n; i++) {
    const pivot = rows[i][i];
    rows[i] = rows[i].map((value) => value / pivot);
    for (let j = 0; j < n; j++) {
      if (j === i) continue;
      const factor = rows[j][i];
      rows[j] = rows[j].map((value, k) => value - factor * rows[i][k]);
    }
  }
  return rows.map((row) => row.slice(n));
}

/**
 * The motion of one edge, in pixels: where it was along its way, and its speed at the first frame.
 *
 * @param taps places { t, x, y } in the order of time, t in seconds that really passed
 * @param tapSd standard deviation of a tap along the way, in pixels of the film
 * @throws NoSpeed in words
 */
export function motionOf(taps, tapSd) {
  if (taps.length < FEWEST) throw new NoSpeed('Tap the edge in three frames or more; so far in ' + taps.length + '.');
  const way = direction(taps);
  const places = taps.map((tap) => ({ t: tap.t - taps[0].t, s: (tap.x - taps[0].x) * way.x + (tap.y - taps[0].y) * way.y }));
  for (let i = 1; i < places.length; i++) {
    if (!(places[i].t > places[i - 1].t)) throw new NoSpeed('Two taps lie in the same frame.');
    if (places[i].s < places[i - 1].s - BACKWARDS * tapSd) throw new NoSpeed('The edge goes backwards from tap ' + i + ' to tap ' + (i + 1) + ': was it the same edge, and before the harness came taut?');
  }
  const line = leastSquares(places, 2);
  const spread = (fit) => (BELIEVED * tapSd ** 2 + fit.squares) / (BELIEVED + places.length - fit.found.length);
  let fit = line;
  if (places.length >= BENDS) {
    const bent = leastSquares(places, 3);
    if (Math.abs(bent.found[2]) > SEEN * Math.sqrt(spread(bent) * bent.inverse[2][2])) fit = bent;
  }
  return { places, terms: fit.found, speed: fit.found[1], sd: Math.sqrt(spread(fit) * fit.inverse[1][1]), bent: fit !== line, way };
}

/**
 * The speed at which two parts leave each other.
 *
 * @param edge taps on an edge of the part that leaves
 * @param other taps on an edge of the other part where that moves too, else none
 * @param scale taps on the ends of a known length
 * @param metres that length
 * @param tapSd standard deviation of a tap, in pixels of the film
 * @return metresPerSecond, its relative standard deviation and what that is made of, and the motion of the edge
 * @throws NoSpeed in words
 */
export function speedOf({ edge, other, scale, metres, tapSd }) {
  const { metres: perPixel, pixels } = scaleOf(scale, metres);
  const motion = motionOf(edge, tapSd);
  let { speed, sd } = motion;
  if (other.length > 0) {
    const away = motionOf(other, tapSd);
    speed = Math.hypot(motion.way.x * motion.speed - away.way.x * away.speed, motion.way.y * motion.speed - away.way.y * away.speed);
    sd = Math.hypot(motion.sd, away.sd);
  }
  const metresPerSecond = speed * perPixel;
  if (!(metresPerSecond >= SLOWEST && metresPerSecond <= FASTEST)) {
    throw new NoSpeed('That would be ' + Number(metresPerSecond.toPrecision(2)) + ' m/s, which no part leaves at: look at the known length, the rate and the edge.');
  }
  const parts = { taps: sd / speed, scale: Math.hypot((Math.SQRT2 * tapSd) / pixels, LENGTH), rate: RATE, square: SQUARE };
  const relative = Math.hypot(...Object.values(parts));
  if (relative > LARGEST) throw new NoSpeed('That is too uncertain to tell anything: tap more frames, further apart.');
  return { metresPerSecond, relative, parts, motion, perPixel };
}

/** A graph of place against time: where its points, its line and its ticks lie in a box. */
export function plotted(motion, perPixel, { width, height, left, bottom }) {
  const last = motion.places[motion.places.length - 1];
  const at = (t) => motion.terms.reduce((sum, term, i) => sum + term * t ** i, 0);
  const far = Math.max(last.s, at(last.t)) * perPixel;
  const x = (t) => left + (t / last.t) * (width - left - 8);
  const y = (s) => height - bottom - ((s * perPixel) / far) * (height - bottom - 8);
  const steps = Array.from({ length: 21 }, (_, i) => (i * last.t) / 20);
  return {
    points: motion.places.map(({ t, s }) => ({ x: x(t), y: y(s) })),
    line: steps.map((t) => ({ x: x(t), y: y(at(t)) })),
    across: { from: x(0), to: x(last.t), seconds: last.t },
    up: { from: y(0), to: y(far / perPixel), metres: far },
  };
}
