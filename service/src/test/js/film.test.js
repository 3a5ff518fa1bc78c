import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { NoSpeed, motionOf, playsAt, plotted, really, scaleOf, speedOf } = await module('film');

// A generator with a seed: numerical recipes' linear congruence (W. H. Press et al., Numerical Recipes, 2nd ed., ch. 7.1).
function generator(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  return { uniform, normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()) };
}

const tenMetresASecond = (frames, rate, perPixel, angle = 0) => Array.from({ length: frames }, (_, i) => {
  const way = (10 * i) / rate / perPixel;
  return { t: 3 + i / rate, x: 100 + way * Math.cos(angle), y: 80 + way * Math.sin(angle) };
});

const across = (pixels) => [{ x: 50, y: 60 }, { x: 50, y: 60 + pixels }];
const measured = (more) => speedOf({ edge: tenMetresASecond(6, 240, 0.001), other: [], scale: across(98), metres: 0.098, tapSd: 1.5, ...more });

test('an edge that moves evenly has the speed that it has, whatever way it goes', () => {
  for (const angle of [0, 0.3, Math.PI / 2, 2, -2.5, Math.PI]) {
    const { metresPerSecond } = measured({ edge: tenMetresASecond(5, 240, 0.001, angle) });
    assert.ok(Math.abs(metresPerSecond - 10) < 1e-9, 'at ' + angle + ' it is ' + metresPerSecond);
  }
});

test('two parts that both move leave each other at the difference', () => {
  const back = tenMetresASecond(6, 240, 0.002, Math.PI); // 5 m/s the other way, in pixels of 1 mm
  const both = measured({ other: back });
  assert.ok(Math.abs(both.metresPerSecond - 15) < 1e-9);
  assert.ok(both.parts.taps > 0);
});

// By hand: v = Σ(t − t̄)(s − s̄) / Σ(t − t̄)² = (1·1 + 1·1.1) / 2 = 1.05 for places 0, 1, 2.1 (deviations −1.0333…, −0.0333…, 1.0667…).
test('least squares are those worked out by hand, and the uncertainty too', () => {
  const motion = motionOf([{ t: 0, x: 0, y: 0 }, { t: 1, x: 10, y: 0 }, { t: 2, x: 21, y: 0 }], 1);
  assert.ok(Math.abs(motion.speed - 10.5) < 1e-9);
  // Residuals 1/6, −1/3, 1/6: squares 1/6. Spread (4·1 + 1/6)/(4 + 1); variance of the slope that over Σ(t − t̄)² = 2.
  assert.ok(Math.abs(motion.sd - Math.sqrt((4 + 1 / 6) / 5 / 2)) < 1e-9);
});

test('a bend is believed where it is seen, and then the speed is that of the first frame', () => {
  const slowing = Array.from({ length: 9 }, (_, i) => ({ t: i / 100, x: 1000 * (i / 100) - 3000 * (i / 100) ** 2, y: 0 }));
  const bent = motionOf(slowing, 0.3);
  assert.equal(bent.bent, true);
  assert.ok(Math.abs(bent.speed - 1000) < 1e-6);
  assert.equal(motionOf(slowing.slice(0, 4), 0.3).bent, false);
  assert.equal(motionOf(tenMetresASecond(9, 240, 0.001), 1.5).bent, false);
});

test('what a file plays at is told by its frames, left out ones or not', () => {
  const frames = (rate, count) => Array.from({ length: count }, (_, i) => i / rate);
  assert.equal(playsAt(frames(30, 8)), 30);
  assert.equal(playsAt(frames(29.97, 8)), 30);
  assert.equal(playsAt(frames(240, 8)), 240);
  assert.equal(playsAt(frames(120, 12).filter((_, i) => i % 5 !== 2)), 120);
  assert.equal(playsAt(frames(37, 9)), 37);
  assert.equal(playsAt([0, 0.1]), null);
  assert.equal(playsAt([]), null);
});

test('a film taken at 240 and played at 30 is eight times slower than what it shows', () => {
  assert.equal(really(0.8, 30, 240), 0.1);
  assert.equal(really(0.1, 240, 240), 0.1);
});

test('every way that there is no speed is said in words', () => {
  const refused = (more, words) => assert.throws(() => measured(more), (failure) => failure instanceof NoSpeed && words.test(failure.message));
  refused({ edge: [] }, /three frames or more; so far in 0/);
  refused({ edge: tenMetresASecond(2, 240, 0.001) }, /so far in 2/);
  refused({ scale: [{ x: 1, y: 1 }] }, /both ends/);
  refused({ scale: across(0) }, /lie on one another/);
  refused({ metres: 0 }, /Type the length/);
  refused({ metres: NaN }, /Type the length/);
  refused({ edge: [...tenMetresASecond(3, 240, 0.001), { t: 4, x: 100, y: 80 }] }, /backwards from tap 3 to tap 4/);
  refused({ edge: [...tenMetresASecond(3, 240, 0.001), tenMetresASecond(3, 240, 0.001)[2]] }, /same frame/);
  const slowed = (by) => tenMetresASecond(6, 240, 0.001).map((tap) => ({ ...tap, t: tap.t * by }));
  refused({ edge: slowed(0.01) }, /1000 m\/s, which no part leaves at/);
  refused({ edge: slowed(100) }, /0\.1 m\/s/);
  refused({ edge: tenMetresASecond(3, 240, 0.5).map((tap, i) => ({ ...tap, x: 100 + i * 0.7, y: 80 })), metres: 20 }, /too uncertain/);
  assert.throws(() => scaleOf([], 1), NoSpeed);
});

test('the graph lies in its box, its line through its points', () => {
  const { motion, perPixel } = measured({});
  const graph = plotted(motion, perPixel, { width: 300, height: 160, left: 40, bottom: 30 });
  assert.equal(graph.points.length, 6);
  for (const { x, y } of [...graph.points, ...graph.line]) assert.ok(x >= 40 && x <= 300 && y >= 0 && y <= 130.001);
  assert.ok(Math.abs(graph.up.metres - (10 * 5) / 240) < 1e-9);
  assert.ok(Math.abs(graph.across.seconds - 5 / 240) < 1e-12);
  assert.ok(Math.abs(graph.line[20].y - graph.points[5].y) < 1e-6);
});

// Taps that scatter as they are said to, films up to ten degrees askew, lengths and rates as good as they are taken to be.
test('the stated uncertainty holds: in 88 to 97 of 100 films the truth lies within 1.645 of it', () => {
  const { uniform, normal } = generator(20260);
  let held = 0;
  const errors = [];
  const films = 2000;
  for (let film = 0; film < films; film++) {
    const truth = 2 + 23 * uniform();
    const rate = [30, 60, 120, 240][Math.floor(4 * uniform())];
    const perPixel = 0.0015;
    const tapSd = 1 + uniform();
    const askew = Math.cos((10 * Math.PI / 180) * uniform());
    const frames = Math.max(3, Math.min(9, Math.floor((600 * perPixel * rate) / truth)));
    const real = rate * (1 + 0.01 * normal());
    const edge = Array.from({ length: frames }, (_, i) => ({ t: i / rate, x: (truth * askew * i) / real / perPixel + tapSd * normal(), y: tapSd * normal() }));
    const scale = across(65).map((tap) => ({ x: tap.x, y: tap.y + tapSd * normal() }));
    const { metresPerSecond, relative } = speedOf({ edge, other: [], scale, metres: 65 * perPixel * (1 + 0.01 * normal()), tapSd });
    if (Math.abs(metresPerSecond - truth) <= 1.645 * relative * truth) held++;
    errors.push(Math.abs(metresPerSecond / truth - 1));
  }
  const share = held / films;
  errors.sort((a, b) => a - b);
  assert.ok(share > 0.88 && share < 0.97, 'held in ' + share);
  assert.ok(errors[films / 2] < 0.03, 'median error ' + errors[films / 2]);
});
