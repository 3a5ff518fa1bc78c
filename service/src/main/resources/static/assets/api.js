// Speaking to the service. Only an answer that can be nobody else's counts as one.

const PATIENCE = 20000; // ms

/** How long a photo may be on its way, in ms: 5 MB over a poor network. */
export const PATIENCE_OF_A_PHOTO = 180000;

/** An answer of the service: status, body, seconds to wait where it asked for that, and the tag of what it answered. */
export class Answer {
  constructor(status, body, wait, etag) {
    this.status = status;
    this.body = body;
    this.wait = wait;
    this.etag = etag;
  }
  get ok() { return this.status >= 200 && this.status < 300; }
}

/** No answer of the service: no network, a portal in between, a proxy, a timeout. */
export class NoAnswer extends Error {}

/** The service wants to know who asks. */
export class SignedOut extends Error {}

/** Asks the service. @throws NoAnswer where what came back is not from it */
export function ask(method, path, body, headers, patience) {
  return exchange(method, path, body, headers, 'application/json', (response) => response.json(), patience);
}

/** A part of a page, for a body where there is one: as an Answer whose body is the element of that id. @throws NoAnswer */
export function part(path, body, id) {
  return exchange(body === null ? 'GET' : 'POST', path, body, {}, 'text/html', async (response) => {
    const found = new DOMParser().parseFromString(await response.text(), 'text/html').getElementById(id);
    if (!found) throw new NoAnswer('what answered is not the service');
    return document.importNode(found, true);
  });
}

/** One question and its answer; a success has the type asked for and is read as that, all else is a problem. */
async function exchange(method, path, body, headers, wanted, read, patience = PATIENCE) {
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), patience);
  try {
    const response = await fetch(path, {
      method,
      headers: { accept: wanted + ', application/problem+json', ...(body ? { 'content-type': 'application/json' } : {}), ...headers },
      body,
      cache: 'no-store',
      credentials: 'same-origin',
      redirect: 'error',
      signal: cut.signal,
    });
    const type = response.headers.get('content-type') || '';
    const wait = Number(response.headers.get('retry-after')) || 0;
    if (response.status === 401) return new Answer(401, null, wait);
    if (response.status === 204 || response.status === 304) return new Answer(response.status, null, wait);
    if (!type.startsWith(response.ok ? wanted : 'application/problem+json')) throw new NoAnswer('what answered is not the service');
    const content = response.ok ? await read(response) : await response.json();
    return new Answer(response.status, content, wait, response.headers.get('etag'));
  } catch (failure) {
    if (failure instanceof NoAnswer) throw failure;
    throw new NoAnswer(failure.message);
  } finally {
    clearTimeout(timer);
  }
}

/** The body of a GET, or null where the service refuses it. @throws NoAnswer */
export async function read(path) {
  const answer = await ask('GET', path);
  if (answer.status === 401) throw new SignedOut();
  return answer.ok ? answer.body : null;
}

/** A picture for a body, as an element; null where there is none. Texts in it were escaped where it was drawn. @throws NoAnswer */
export async function picture(path, body) {
  try {
    const response = await fetch(path, { method: 'POST', headers: { accept: 'image/svg+xml', 'content-type': 'application/json' }, body, credentials: 'same-origin', redirect: 'error' });
    const type = response.headers.get('content-type') || '';
    if (!response.ok || !type.startsWith('image/svg+xml')) return null;
    const parsed = new DOMParser().parseFromString(await response.text(), 'image/svg+xml');
    return parsed.querySelector('parsererror') ? null : document.importNode(parsed.documentElement, true);
  } catch (failure) {
    throw new NoAnswer(failure.message);
  }
}
