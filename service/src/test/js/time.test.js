import assert from 'node:assert/strict';
import { test } from 'node:test';
import { module } from './browser.js';

const { firedNow, localText, withOffset } = await module('time');

/** Runs a work where the phone is. */
function at(place, work) {
  const before = process.env.TZ;
  process.env.TZ = place;
  try {
    work();
  } finally {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  }
}

test('a time carries the offset that holds there at that time', () => {
  at('Asia/Kolkata', () => assert.equal(withOffset('2026-05-03T10:20'), '2026-05-03T10:20:00+05:30'));
  at('America/St_Johns', () => assert.equal(withOffset('2026-01-03T10:20'), '2026-01-03T10:20:00-03:30'));
  at('Europe/London', () => {
    assert.equal(withOffset('2026-01-03T10:20'), '2026-01-03T10:20:00+00:00');
    assert.equal(withOffset('2026-05-03T10:20'), '2026-05-03T10:20:00+01:00');
  });
});

test('the hour that spring leaves out is moved, not sent as it is', () => {
  at('Europe/London', () => assert.equal(withOffset('2026-03-29T01:30'), '2026-03-29T02:30:00+01:00'));
});

test('what is no time has no offset', () => {
  for (const typed of ['', 'yesterday', '2026-13-01T10:00']) assert.equal(withOffset(typed), null, typed);
});

test('an instant is written as the clock there shows it', () => {
  at('Asia/Kolkata', () => assert.equal(localText(new Date('2026-01-02T20:05:59Z')), '2026-01-03T01:35'));
});

test('now is the same instant, to the second', () => {
  for (const place of ['Asia/Kolkata', 'America/St_Johns', 'UTC']) {
    at(place, () => {
      const before = Math.floor(Date.now() / 1000) * 1000;
      const now = firedNow();
      assert.match(now, /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/);
      const instant = new Date(now).getTime();
      assert.ok(instant >= before && instant <= Date.now(), now);
    });
  }
});
