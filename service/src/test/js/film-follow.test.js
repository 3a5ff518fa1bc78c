import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { foundAgain, grey, windowAt } = await module('film-follow');

/** A picture of a dark part with a corner at a place, its edges as soft as a lens makes them, on a light ground with texture. */
function picture(cornerX, cornerY, light = 0) {
  const width = 160;
  const height = 90;
  const soft = (distance) => 1 / (1 + Math.exp(-distance / 0.8));
  const values = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) values[y * width + x] = light + 180 + 6 * Math.sin(x * 1.7 + y * 0.9) - 120 * soft(x - cornerX) * soft(y - cornerY);
  }
  return { width, height, values };
}

test('what was tapped is found again to half a pixel, in other light too', () => {
  const pattern = windowAt(picture(50, 40), 50, 40, 10);
  for (const [x, y] of [[50, 40], [63, 40], [63.4, 40], [58.3, 43.6], [40, 37]]) {
    const found = foundAgain(picture(x, y, 25), pattern, { x: 55, y: 41 }, { x: 20, y: 6 });
    assert.ok(Math.abs(found.x - x) < 0.5 && Math.abs(found.y - y) < 0.5, 'at ' + x + ', ' + y + ' it is found at ' + found.x + ', ' + found.y);
    assert.ok(found.alike > 0.9);
  }
});

test('what is not there is not found, nor what left the picture', () => {
  const pattern = windowAt(picture(50, 40), 50, 40, 10);
  assert.equal(foundAgain(picture(-100, 200), pattern, { x: 60, y: 40 }, { x: 10, y: 5 }), null);
  assert.equal(foundAgain(picture(170, 40), pattern, { x: 168, y: 40 }, { x: 10, y: 5 }), null);
  assert.equal(foundAgain(picture(50, 40), pattern, { x: 100, y: 40 }, { x: 10, y: 5 }), null);
});

test('a window that shows nothing, or reaches out of the picture, is none', () => {
  assert.equal(windowAt({ width: 40, height: 40, values: new Float32Array(1600).fill(90) }, 20, 20, 10), null);
  assert.equal(windowAt(picture(50, 40), 5, 40, 10), null);
});

test('grey weighs colours as an eye does', () => {
  const { values } = grey({ width: 3, height: 1, data: Uint8ClampedArray.from([255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255]) });
  assert.deepEqual([...values].map((value) => Math.round(value)), [76, 150, 29]);
});
