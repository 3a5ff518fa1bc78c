// Pages that open without network from what this phone keeps: history, flight sheet and cards of rockets, those of the newest kit
// first. The worker fetches and keeps them; where there is none, none are kept.

/** For how many rockets all pages are kept as new as the kit, or null as long as the worker has not said. */
export const kept = { rockets: null };

const MOST = 20; // pages; the worker keeps no more

/** The rockets whose pages are to be kept, each with all of its pages, as many as there is room for. */
export function wanted(joints) {
  const rockets = new Map();
  for (const joint of joints) {
    const at = '/airframes/' + joint.airframeId;
    if (!rockets.has(at)) rockets.set(at, [at, at + '/flight-day']);
    rockets.get(at).push('/api/joints/' + joint.id + '/ladder');
  }
  let room = MOST;
  return [...rockets.values()].filter((pages) => {
    const fits = pages.length <= room;
    room = fits ? room - pages.length : 0;
    return fits;
  });
}

/** Has the worker keep the pages of these joints, as new as what was learned of any of them; calls back when it has. */
export function keepPages(joints, done) {
  if (!navigator.serviceWorker) return;
  kept.rockets = null;
  const rockets = wanted(joints);
  const pages = rockets.flat();
  const since = joints.map((joint) => joint.moved || '').sort().pop() || '';
  navigator.serviceWorker.onmessage = ({ data }) => {
    if (!data || data.pages === undefined) return;
    kept.rockets = data.pages === pages.length ? rockets.length : null;
    done();
  };
  navigator.serviceWorker.ready.then((ready) => ready.active.postMessage({ keep: pages, since })).catch(() => {});
}
