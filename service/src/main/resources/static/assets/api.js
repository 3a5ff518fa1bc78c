// Speaking to the service. Only an answer that can be nobody else's counts as one.

const PATIENCE = 20000;

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

/** Asks the service. @throws NoAnswer where what came back is not from it */
export async function ask(method, path, body, headers) {
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), PATIENCE);
  try {
    const response = await fetch(path, {
      method,
      headers: { accept: 'application/json, application/problem+json', ...(body ? { 'content-type': 'application/json' } : {}), ...headers },
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
    const own = response.ok ? type.startsWith('application/json') : type.startsWith('application/problem+json');
    if (!own) throw new NoAnswer('what answered is not the service');
    return new Answer(response.status, await response.json(), wait, response.headers.get('etag'));
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

/** The service wants to know who asks. */
export class SignedOut extends Error {}

/** A part of a page for a body: as an Answer whose body is the element of that id. @throws NoAnswer */
export async function part(path, body, id) {
  try {
    const response = await fetch(path, { method: 'POST', headers: { accept: 'text/html, application/problem+json', 'content-type': 'application/json' }, body, cache: 'no-store', credentials: 'same-origin', redirect: 'error' });
    if (response.status === 401) return new Answer(401, null, 0);
    if (!response.ok) return new Answer(response.status, await response.json(), 0);
    const found = new DOMParser().parseFromString(await response.text(), 'text/html').getElementById(id);
    if (!found) throw new NoAnswer('what answered is not the service');
    return new Answer(response.status, document.importNode(found, true), 0);
  } catch (failure) {
    if (failure instanceof NoAnswer) throw failure;
    throw new NoAnswer(failure.message);
  }
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
