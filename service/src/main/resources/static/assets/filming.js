// Whether every firing is filmed, as the flyer says it here: kept on the phone at once, told to the service when it can be reached.
// The charges are the service's; until it was told, what is shown counts on films as it did before.

import { get, write } from './store.js';
import { SignedOut, ask } from './api.js';

const FACT = 'filming';

/** What the service counts on, `on`, and what the flyer said that it was not told yet, `wanted`; `refused` where it would not hear it. */
export async function filming() {
  return { on: false, wanted: null, refused: false, ...(await get('facts', FACT)) };
}

const keep = async (more) => {
  const now = { ...(await filming()), ...more, name: FACT };
  await write(['facts'], ([facts]) => facts.put(now));
};

/** The flyer says that every firing is filmed, or that none is. */
export async function film(on) {
  const now = await filming();
  await keep({ wanted: now.on === on ? null : on, refused: false });
}

/** Tells the service what it was not told yet. @throws NoAnswer, SignedOut */
export async function tellFilming() {
  const { wanted } = await filming();
  if (wanted === null) return;
  const answer = await ask('PUT', '/api/filming', JSON.stringify({ filming: wanted }));
  if (answer.status === 401) throw new SignedOut();
  if (answer.status >= 500 || answer.status === 429) return; // at the next refresh
  const now = await filming();
  if (now.wanted === wanted) await keep({ on: answer.ok ? wanted : now.on, wanted: null, refused: !answer.ok });
}

/** What a kit says that it counts on. */
export async function heardOfFilming(percent) {
  const on = percent !== null && percent !== undefined;
  const now = await filming();
  if (now.on !== on || now.wanted === on) await keep({ on, wanted: now.wanted === on ? null : now.wanted });
}
