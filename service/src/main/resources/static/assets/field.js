// The field page: which joint, what to fire, what it did. Everything typed and saved is on the phone before it is anywhere else.

import { announce, clock, h, parsed, sign, term } from './dom.js';
import { outlook, pendingOf } from './plan.js';
import { never, shown } from './decimal.js';
import { drain, drainNow, entries, progress, unsent, unsentPhoto, watch } from './outbox.js';
import { freshness, joints, refresh } from './known.js';
import { film, filming } from './filming.js';
import { kept } from './pages.js';
import { get, onChange, write } from './store.js';
import { exportEntries } from './export.js';
import { makeForm } from './report.js';
import { fillKept, savedLine, waiting } from './kept.js';

const view = document.getElementById('view');
const bar = document.getElementById('unsent');
let form = null; // the form of the joint shown
let saved = null; // key of the test saved last on this page

const jointId = () => (/^\/field\/([0-9a-f-]{36})$/.exec(location.pathname) || [])[1] || null;

// --- moving between the list and a joint, without asking the network for a page ---

function go(path) {
  history.pushState(null, '', path);
  show(true);
}

function link(path, attributes, ...children) {
  return h('a', {
    href: path,
    ...attributes,
    onclick: (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.button) return;
      event.preventDefault();
      go(path);
    },
  }, ...children);
}

async function show(moved) {
  form = null;
  const id = jointId();
  view.replaceChildren();
  if (id) await showJoint(id);
  else await showList();
  if (moved) {
    scrollTo(0, 0);
    const heading = view.querySelector('h1');
    if (heading) heading.focus();
  }
}

// --- the list ---

async function showList() {
  document.title = 'At the field – Sunder';
  const list = h('div', { id: 'joints' });
  view.replaceChildren(h('h1', { tabindex: '-1' }, 'Which joint?'), instead() ? h('p', { class: 'notice', id: 'instead' }, instead()) : '', list, h('div', { id: 'list-cautions' }), h('p', { id: 'ready', class: 'small' }));
  await fillList();
}

async function fillList() {
  const list = document.getElementById('joints');
  if (!list) return;
  document.getElementById('ready').textContent = readiness();
  const known = await joints();
  if (known.length === 0) {
    list.replaceChildren(h('p', {}, nothingKnown()));
    return;
  }
  const open = document.querySelector('#list-cautions details[open]');
  if (!open) document.getElementById('list-cautions').replaceChildren(...cautions(known[0], true));
  const groups = new Map();
  for (const joint of known) groups.set(joint.airframeId, [...(groups.get(joint.airframeId) || []), joint]);
  list.replaceChildren(...[...groups.values()].map((group) => h('section', {},
    h('h2', {}, group[0].airframe, group[0].example ? [' ', h('span', { class: 'badge example' }, 'invented')] : ''),
    h('ul', { class: 'choices' }, group.map((joint) => h('li', {}, link('/field/' + joint.id, { class: 'choice' },
      h('strong', {}, joint.name),
      h('span', {}, about(joint)))))))));
}

/** Whether this page works without network now. */
function readiness() {
  const more = freshness.left ? (freshness.left === 1 ? ' The joint' : ' The ' + freshness.left + ' joints') + ' that nothing happened at for longest ' + (freshness.left === 1 ? 'is' : 'are') + ' not kept.' : '';
  if (freshness.ready) return 'Every plan is kept on this phone: ready without network.' + pagesToo() + more;
  return freshness.state === 'asking' ? 'Plans are being brought to this phone…' : '';
}

/** What else opens without network. */
function pagesToo() {
  return kept.rockets ? ' History, flight sheet and cards of ' + (kept.rockets === 1 ? 'one rocket' : kept.rockets + ' rockets') + ' open too, with their day on them.' : '';
}

/** Why this page stands here in place of another that was asked for without network. */
function instead() {
  if (location.search === '?older') return 'What you asked for is kept on this phone, but more is known since: it would name a charge that may not hold any more. It opens again with a network; what to load next stands here.';
  return location.search === '?not-kept' ? 'The service cannot be reached, and what you asked for is not kept on this phone. Without network there is this page, with what to load next.' : null;
}

function nothingKnown() {
  if (freshness.state === 'fresh') return ['There is no joint yet. ', h('a', { href: '/' }, 'Begin with an airframe.')];
  if (freshness.state === 'unreachable') return 'The service cannot be reached, and this phone knows no joint yet.';
  if (freshness.state === 'signed-out') return signIn('Sign in to see your joints.');
  return 'Asking the service…';
}

function about(joint) {
  const event = joint.event === 'other' ? '' : joint.event + ' · ';
  return event + answer(joint.advice, joint) + ' · evidence ' + joint.advice.evidence + ' · ' + tests(joint.advice.basis.tests) + ' counted';
}

/** The answer for a joint in three words. */
function answer(advice, joint) {
  const named = advice.charge || advice.flightCharge;
  const charge = named ? shown(named.value, joint.measure.value) + ' ' + named.unit : '';
  if (advice.decision === 'fire') return 'fire ' + charge + ' next';
  if (advice.decision === 'stop') return 'fly ' + charge;
  return advice.decision === 'state-limit' ? 'state a limit' : 'change the setup';
}

function tests(n) {
  return n + (n === 1 ? ' test' : ' tests');
}

// --- a joint ---

async function showJoint(id) {
  const joint = await get('joints', id);
  if (!joint) {
    view.replaceChildren(h('h1', { tabindex: '-1' }, 'This phone does not know this joint'), h('p', {}, nothingKnown()), h('p', {}, link('/field', {}, 'All joints')));
    return;
  }
  document.title = joint.airframe + ', ' + joint.name + ' – Sunder';
  const draft = await get('drafts', id);
  form = makeForm(joint, draft, whenSaved);
  if (location.hash === '#flight') form.fly();
  view.replaceChildren(
    h('div', { class: 'head' }, h('h1', { tabindex: '-1' }, joint.airframe, ', ', joint.name), link('/field', { class: 'touch' }, 'All joints')),
    joint.example ? h('div', { class: 'invented', role: 'note', 'aria-label': 'Example' }, h('p', {}, h('strong', {}, 'An invented rocket.'), ' Its charges are no charges for yours.')) : '',
    h('section', { id: 'next', 'aria-labelledby': 'next-title' }),
    form.element,
    h('section', { id: 'about' }),
    h('section', { id: 'kept', 'aria-labelledby': 'kept-title' }),
    h('p', { class: 'links' },
      h('a', { href: '/api/joints/' + id + '/ladder', class: 'touch' }, 'Card to print'),
      h('a', { href: '/airframes/' + joint.airframeId, class: 'touch' }, 'History of ' + joint.airframe)));
  await fillJoint();
}

async function fillJoint() {
  const id = jointId();
  const joint = id && (await get('joints', id));
  if (!joint || !document.getElementById('next')) return;
  const known = await entries();
  const next = outlook(joint, pendingOf(known, id));
  const read = await cautionsRead();
  document.getElementById('next').replaceChildren(...savedJust(known, id), ...nextParts(joint, next, read));
  document.getElementById('about').replaceChildren(...filmed(joint, next, await filming()), ...restsOn(joint));
  form.prefill(joint, next, freshness.state);
  fillKept(known.filter((e) => e.jointId === id), joint, (entry) => form.correct(entry));
}

/** The test saved on this page, as long as it stands; a refused one speaks for itself below. */
function savedJust(known, id) {
  const entry = known.find((e) => e.key === saved && e.jointId === id);
  return entry && !entry.undo && entry.state !== 'refused' ? [savedLine(entry)] : [];
}

const named = (mass, joint) => [h('span', { class: 'figure' }, shown(mass.value, joint.measure.value)), ' ', mass.unit];

function nextParts(joint, next, read) {
  const step = next.step;
  const title = (words) => h('h2', { id: 'next-title', class: 'answer' }, words);
  if (!step) {
    return [title(next.kind === 'ends' ? 'The stored plan ends here' : 'No plan yet'), h('p', { class: 'why' }, next.reason), ...minded(joint), ...cautions(joint, read)];
  }
  const parts = [];
  if (step.decision === 'fire') parts.push(title('Fire next on the ground'), h('p', { class: 'charge' }, named(step.charge, joint)));
  else if (step.decision === 'stop') parts.push(title('Enough is known to fly'), h('p', { class: 'charge' }, named(step.flightCharge, joint)));
  else if (step.decision === 'state-limit') parts.push(title('State what the airframe withstands'));
  else parts.push(title('Change the setup'));
  if (step.backup) parts.push(h('p', {}, term('backup-charge', 'Backup charge'), ': ', named(step.backup, joint), step.backupProof ? (next.kind === 'advice' ? '. ' : ', ') + step.backupProof.text : ''));
  parts.push(h('p', { class: 'why' }, why(step, next)));
  if (next.kind === 'advice') parts.push(...ruler(joint));
  if (step.options && step.options.length) parts.push(h('ul', {}, step.options.map((option) => h('li', {}, option.text))));
  if (step.decision === 'stop') parts.push(h('p', {}, h('a', { href: '/airframes/' + joint.airframeId + '/flight-day', class: 'touch' }, 'Sheet for the flight day')));
  return [...parts, ...minded(joint), ...cautions(joint, read)];
}

/** The charge ruler, the widest that fits. */
function ruler(joint) {
  const drawn = joint.ruler || [];
  const fits = drawn.filter((picture) => picture.width <= view.clientWidth).pop() || drawn[0];
  return fits ? [h('figure', { class: 'ruler-kept' }, parsed(fits.svg))] : [];
}

function why(step, next) {
  if (next.kind === 'advice') return step.reason.text;
  if (step.decision === 'change-setup' || step.decision === 'state-limit') return 'The stored plan finds no allowed charge that reaches the target.';
  return 'From the plan stored on this phone; the service has not yet seen the last test.';
}

const ofCharges = (joint, flag) => (joint.chargeFlags || []).includes(flag.code);

/** What in the setup changes what a charge does. */
function minded(joint) {
  return (joint.flags || []).filter((flag) => ofCharges(joint, flag)).map((flag) => h('p', { class: 'flag' }, flag.text));
}

/** Whether firings are filmed, what this one's film does, and the button that says otherwise. */
function filmed(joint, next, { on, wanted, refused }) {
  if (!joint.advice) return [];
  const says = wanted === null ? on : wanted;
  const films = next.kind === 'advice' && next.step.filmed;
  const words = wanted !== null ? (says ? 'You film your tests' : 'You do not film your tests') + ': kept on this phone, and told to the service when it can be reached. Until then the plan shown counts on films as before.'
    : !on ? 'A filmed test tells more: how fast the parts left says how far above its threshold the charge was.'
      : films ? 'You film your tests. ' + films.text : 'You film your tests: the plan counts on it, and names what comes next as if no speed were read.';
  return [h('div', { class: 'filming' },
    h('p', { id: 'filming-said' }, words, refused ? ' The service did not take it: the key of this phone may not change that.' : ''),
    h('button', { type: 'button', id: 'filming', onclick: () => film(!says).then(() => { fill(); refresh(jointId()); }) }, says ? 'I do not film my tests' : 'I film my tests'))];
}

/** What the answer rests on. */
function restsOn(joint) {
  const advice = joint.advice;
  if (!advice) return [];
  return [
    h('p', {}, 'Never more than ', h('strong', {}, never(advice.ceiling.value, joint.measure.value), ' ', advice.ceiling.unit), ' here, whatever happens: that is the ', term('ceiling', 'ceiling'), '.'),
    ...(joint.flags || []).filter((flag) => !ofCharges(joint, flag)).map((flag) => h('p', { class: 'notice' }, flag.text)),
    h('p', { class: 'small' }, 'Setup revision ' + advice.basis.setupRevision + ', ' + tests(advice.basis.tests) + ' counted, ', term('evidence', 'evidence'), ' ' + advice.evidence
      + '; as the service said at ' + clock(joint.at) + '.'),
  ];
}

const today = () => new Date().toDateString();

async function cautionsRead() {
  return ((await get('facts', 'cautions')) || {}).day === today();
}

/** The line that matters now, and one tap away the whole list; in full until it was read today. */
function cautions(joint, read) {
  const list = joint.advice ? joint.advice.cautions : [];
  if (list.length === 0) return [];
  const all = h('div', { class: 'cautions', role: 'note', 'aria-label': 'Cautions' }, h('ul', {}, list.map((c) => h('li', {}, c.text))));
  if (!read) {
    all.append(h('button', { type: 'button', id: 'cautions-read', onclick: () => write(['facts'], ([facts]) => facts.put({ name: 'cautions', day: today() })).then(fill) }, 'I have read these today'));
    return [all];
  }
  return [h('details', { class: 'caution-line' }, h('summary', {}, sign('mind'), h('span', {}, view.dataset.caution), h('u', {}, 'All ' + list.length)), all)];
}

/** Shows and says what comes next, then sends. */
async function whenSaved() {
  const here = (await entries()).filter((entry) => entry.jointId === jointId() && !entry.elsewhere);
  saved = here.length ? here[here.length - 1].key : null;
  await fillJoint();
  const next = document.getElementById('next');
  const charge = next.querySelector('.charge');
  announce('Saved on this phone. ' + next.querySelector('h2').textContent + '. ' + (charge ? charge.textContent : ''));
  next.setAttribute('tabindex', '-1');
  next.focus({ preventScroll: true });
  next.scrollIntoView({ block: 'start' });
  drainNow();
}

// --- the line that is always there ---

async function fillBar() {
  const known = await entries();
  const open = known.filter(unsent);
  const photos = known.filter(unsentPhoto);
  const refused = open.filter((e) => e.state === 'refused').length;
  const any = open.length + photos.length > 0;
  const words = any ? waiting(open.length, photos.length) + (refused ? ', of these refused: ' + refused : '') + '.' : 'Nothing waits to be sent.';
  bar.replaceChildren(
    h('p', { class: 'count' }, h('strong', {}, words), ' ', connection()),
    ...(any && elsewhere([...open, ...photos]) ? [h('p', { class: 'elsewhere' }, elsewhere([...open, ...photos]))] : []),
    ...(any ? [h('div', { class: 'actions' },
      h('button', { type: 'button', onclick: drainNow }, 'Send now'),
      open.length ? h('button', { type: 'button', onclick: () => exportEntries(open) }, 'Export them') : null)] : []));
}

function elsewhere(open) {
  const others = new Map(open.filter((e) => e.jointId !== jointId()).map((e) => [e.jointId, e.title]));
  return others.size ? ['At: ', [...others].map(([id, title], i) => [i ? '; ' : '', link('/field/' + id, {}, title)])] : null;
}

function signIn(words) {
  return h('a', { href: '/sign-in?to=' + encodeURIComponent(location.pathname) }, words);
}

function connection() {
  if (freshness.state === 'signed-out') return signIn('Sign in again, then they are sent.');
  return progress.trouble || (freshness.state === 'unreachable' ? 'The service cannot be reached just now; the plans kept on this phone are shown.' : '');
}

let filling = Promise.resolve();
function fill() {
  filling = filling.then(async () => {
    await fillBar();
    if (jointId()) {
      if (document.getElementById('next')) await fillJoint();
      else await show(false);
    } else await fillList();
  }).catch((failure) => broken(failure));
  return filling;
}

function broken(failure) {
  view.replaceChildren(h('h1', {}, 'This phone keeps nothing'), h('p', {}, 'The browser gives this page no storage (' + failure.message + '). Without it tests would be lost, so none are taken here.'));
}

// --- begin ---

if (!isSecureContext) {
  document.getElementById('plain').hidden = false;
}
addEventListener('popstate', () => show(true));
onChange(fill);
watch();
addEventListener('online', () => refresh(jointId()));
document.addEventListener('visibilitychange', () => { if (!document.hidden) refresh(jointId()); });
setInterval(() => { if (form) form.tick(); }, 20000);
if (navigator.storage && navigator.storage.persist) navigator.storage.persist().catch(() => {});
show(false).then(fill).then(() => { refresh(jointId()); drain(); }).catch(broken);
