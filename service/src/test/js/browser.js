// What the modules find in a browser, as far as they need it here: a store in memory, timers that a test looks at, and a
// service whose answers the test gives. Import it before any module.

import 'fake-indexeddb/auto';
import { webcrypto } from 'node:crypto';

globalThis.self = globalThis;
globalThis.crypto ??= webcrypto;
globalThis.navigator ??= {};
// No other tab listens, and an open channel would keep this process waiting.
delete globalThis.BroadcastChannel;

/** Timers set and not cleared: { work, time } by number. They never fire by themselves. */
export const timers = new Map();
let count = 0;
globalThis.setTimeout = (work, time) => {
  timers.set(++count, { work, time });
  return count;
};
globalThis.clearTimeout = (number) => timers.delete(number);

const page = '../../main/resources/static/assets/';

/** A module of the pages. */
export const module = (name) => import(page + name + '.js');

/** Every question asked since the service was given: method, path, headers, body. */
export const asked = [];

/** Has the service answer by a function of a question; what it throws is a broken network. */
export function service(answer) {
  asked.length = 0;
  globalThis.fetch = async (path, { method, headers, body }) => {
    const question = { method, path, headers, body };
    asked.push(question);
    return answer(question);
  };
}

/** An answer of the service. */
export function answered(status, body, headers = {}) {
  const type = status < 300 ? 'application/json' : 'application/problem+json';
  return new Response(body === undefined ? null : JSON.stringify(body), { status, headers: { 'content-type': type, ...headers } });
}

/** The page of a portal in between: it has status 200 and is no answer. */
export const portal = () => new Response('<p>Welcome</p>', { status: 200, headers: { 'content-type': 'text/html' } });

/** Empties what the phone keeps. */
export async function forget() {
  const { write } = await module('store');
  await write(['joints', 'outbox', 'drafts', 'facts', 'photos'], (stores) => stores.forEach((store) => store.clear()));
}
