// The tests of a joint, whoever logged them: those that this phone saved with where each stands, and what else it knows of.

import { announce, clock, h, mark } from './dom.js';
import { shown } from './decimal.js';
import { addPhoto, drainNow, drop, dropPhoto, droppable, progress, sendingPhoto, takeBackElsewhere, undo } from './outbox.js';
import { NoPhoto, prepared } from './photo.js';
import { exportEntries } from './export.js';
import { wordsOf } from './faults.js';

const LABELS = { firedAt: 'Time of firing', charge: 'Charge loaded', outcome: 'Outcome', speed: 'Speed of the parts', speedUncertaintyPercent: 'Good to', notes: 'Note', damaged: 'It broke something', setupRevision: 'Setup' };

let undoing = null; // { key, reason } while a reason is asked for

/** Where photos are chosen, by test: one for as long as the page stands, since a camera may be open while all else is drawn anew. */
const choosing = new Map();

/** Where an entry stands. */
export function stateWords(entry) {
  if (entry.state === 'refused') return 'Refused by the service';
  if (entry.undo && entry.undo.state === 'done') return 'Taken back: ' + entry.undo.reason;
  if (entry.undo && entry.undo.state === 'refused') return 'Stored by the service; taking it back was refused: ' + entry.undo.detail;
  if (progress.sending === entry.key) return 'Being sent';
  if (entry.undo) return 'Taking it back is saved on this phone, not sent yet';
  return entry.state === 'stored' ? 'Stored by the service' : 'Saved on this phone, not sent yet';
}

/**
 * Lists the tests of a joint, newest first: those that this phone saved, and what else the service knows. Each can be taken back.
 *
 * @param entries what this phone keeps of the joint
 * @param joint as this phone knows it, with the last tests of all phones
 * @param correct called with a refused entry that is to be corrected
 */
export function fillKept(entries, joint, correct) {
  const again = () => fillKept(entries, joint, correct);
  const kept = entries.filter((entry) => !entry.elsewhere);
  const voids = new Map(entries.filter((entry) => entry.elsewhere).map((entry) => [entry.testId, entry]));
  const own = new Set(kept.map((entry) => entry.testId));
  const rest = (joint.tests || []).filter((test) => !own.has(test.id));
  const section = document.getElementById('kept');
  const focused = document.activeElement && document.activeElement.id;
  section.replaceChildren(
    h('h2', { id: 'kept-title' }, 'Tests from this phone'),
    kept.length === 0 ? h('p', {}, 'None yet.') : h('ol', { class: 'kept' }, [...kept].reverse().map((entry) => keptItem(entry, correct, again))),
    ...(rest.length === 0 ? [] : [h('h2', {}, 'Tests logged elsewhere'), h('ol', { class: 'kept elsewhere' }, rest.map((test) => otherItem(test, voids.get(test.id), joint, again)))]),
    kept.length + rest.length === 0 ? '' : h('p', { class: 'small' }, 'Times are those of this phone’s clock.'));
  if (focused && focused.startsWith('undo-')) {
    const same = document.getElementById(focused);
    if (same) same.focus();
  }
}

/** The test saved last, in a line above what comes next: where it stands, and the way to take it back. */
export function savedLine(entry) {
  const sent = entry.state === 'stored';
  return h('p', { class: 'saved' }, mark(entry.outcome),
    h('span', {}, h('strong', {}, 'Saved on this phone · ' + (sent ? 'sent' : 'not sent yet')), h('br', {}), entry.charge + ' ' + entry.unit + ' ' + entry.outcome),
    h('button', { type: 'button', 'aria-label': 'Undo: ' + entry.charge + ' ' + entry.unit + ' ' + entry.outcome, onclick: () => {
      const undo = document.getElementById('undo-' + entry.key);
      if (!undo) return;
      undo.click();
      document.getElementById('undo-reason').focus();
    } }, 'Undo'));
}

function keptItem(entry, correct, again) {
  const back = entry.undo && entry.undo.state !== 'refused';
  return h('li', { class: 'entry', 'data-state': entry.state, 'data-key': entry.key },
    h('p', {}, mark(back ? 'void' : entry.outcome), ' ', entry.occasion === 'flight' ? 'flown with ' : '', h('strong', {}, entry.charge + ' ' + entry.unit), ' ', entry.outcome, entry.damaged ? ', it broke something' : '', ', ' + clock(entry.firedAt)),
    entry.notes ? h('p', { class: 'small' }, entry.notes) : null,
    h('p', { class: 'state' }, stateWords(entry)),
    entry.state === 'refused' ? refusal(entry, correct) : null,
    entry.tooFast ? h('p', { class: 'flag' }, 'The parts left each other faster than you stated that they may. Before anything is fired or flown again, look over harness, bulkheads and fittings.') : null,
    photoOf(entry),
    entry.surprise ? h('div', { class: 'surprise' }, h('p', {}, 'This outcome was hardly expected. Before you believe it:'), h('ul', {}, entry.surprise.questions.map((q) => h('li', {}, q)))) : null,
    entry.state !== 'refused' && !back ? takeBack(entry.key, (reason) => undo(entry.key, reason), again) : null);
}

/** What is not sent yet, in words: "2 tests and 1 photo are not sent yet". */
export function waiting(tests, photos) {
  const parts = [[tests, 'test'], [photos, 'photo']].filter(([count]) => count > 0).map(([count, what]) => count + ' ' + what + (count === 1 ? '' : 's'));
  return parts.join(' and ') + (tests + photos === 1 ? ' is' : ' are') + ' not sent yet';
}

/** Where the photo of an entry stands, in words; null where it has none. */
export function photoWords(entry) {
  if (!entry.photo) return null;
  if (sendingPhoto(entry)) return 'Photo: being sent';
  if (entry.photo.state === 'refused') return 'Photo: refused by the service. ' + entry.photo.detail;
  return entry.photo.state === 'stored' ? 'Photo: sent' : 'Photo: on this phone, not sent yet';
}

/** The photo of an entry: where it stands, and what can be done. */
function photoOf(entry) {
  const words = photoWords(entry);
  const sent = entry.photo && entry.photo.state === 'stored';
  return h('div', { class: 'photo-of' },
    words && h('p', { class: 'photo-state' }, sent ? h('a', { href: '/api/ground-tests/' + entry.testId + '/photo', class: 'touch' }, words) : words),
    h('div', { class: 'actions' },
      !entry.photo || entry.photo.state === 'refused' ? chooser(entry) : null,
      droppable(entry) ? h('button', { type: 'button', onclick: () => dropPhoto(entry.key).then(() => announce('The photo is dropped.')) }, 'Drop the photo') : null));
}

function chooser(entry) {
  if (!choosing.has(entry.key)) {
    const fault = h('span', { class: 'fault', role: 'status' });
    const input = h('input', { type: 'file', accept: 'image/jpeg,image/png', 'aria-label': 'Add a photo of ' + entry.charge + ' ' + entry.unit + ' ' + entry.outcome });
    input.addEventListener('change', () => keepPhoto(entry.key, input, fault));
    choosing.set(entry.key, [h('span', { class: 'button choose-photo' }, 'Add a photo', input), fault]);
  }
  return choosing.get(entry.key);
}

async function keepPhoto(key, input, fault) {
  const file = input.files[0];
  if (!file) return;
  input.value = ''; // the same file can be chosen again
  fault.textContent = '';
  try {
    await addPhoto(key, await prepared(file));
    choosing.delete(key);
    announce('The photo is on this phone.');
    drainNow();
  } catch (failure) {
    fault.textContent = failure instanceof NoPhoto ? failure.message : 'This phone would not keep it (' + failure.message + ').';
    announce(fault.textContent);
  }
}

/**
 * Where a test of another phone stands: whether it counts, and that in words where there is something to say. What this phone
 * said of it holds until the service has told of it since.
 *
 * @param said the void that this phone wrote down, or undefined
 * @param at when the service told of the test
 */
export function elsewhereStands(test, said, at) {
  if (said && !(said.undo.state === 'done' && at > said.undo.at)) return { counts: test.counted && said.undo.state === 'refused', words: stateWords(said) };
  if (test.counted) return { counts: true, words: null };
  const last = test.marks[test.marks.length - 1];
  return { counts: false, words: 'Void: ' + (last ? last.reason : test.finding || 'not counted') };
}

const OF_A_PHONE = 'phone: ';

/** Who logged a test, by what the key was called: that of a phone is called after whose it is. */
export function senderWords(key) {
  if (!key) return 'by another phone';
  return key.startsWith(OF_A_PHONE) ? 'by the phone of ' + key.slice(OF_A_PHONE.length) : 'with the key ' + key;
}

function otherItem(test, said, joint, again) {
  const { counts, words } = elsewhereStands(test, said, joint.at);
  return h('li', { class: 'other', 'data-test': test.id },
    h('p', {}, mark(counts ? test.outcome : 'void'), ' ', test.occasion === 'flight' ? 'flown with ' : '', h('strong', {}, shown(test.charge.value, joint.measure.value) + ' ' + test.charge.unit), ' ', test.outcome, test.damaged ? ', it broke something' : '', ', ' + clock(test.firedAt) + ', ' + senderWords(test.loggedBy)),
    words ? h('p', { class: 'state' }, words) : null,
    counts ? takeBack('void-' + test.id, (reason) => takeBackElsewhere(test, joint, reason), again) : null);
}

function refusal(entry, correct) {
  const reason = entry.refusal;
  return h('div', {},
    h('p', {}, sentence(reason)),
    reason.errors.length ? h('ul', {}, reason.errors.map((e) => h('li', {}, faultWords(e)))) : null,
    h('div', { class: 'actions' },
      h('button', { type: 'button', onclick: () => correct(entry) }, 'Correct it'),
      h('button', { type: 'button', onclick: () => exportEntries([entry]) }, 'Export it'),
      h('button', { type: 'button', onclick: async () => { await drop(entry.key); announce('Dropped.'); } }, 'Drop it')));
}

/** What was refused; the service's own detail only where no fault says it field by field. */
function sentence(reason) {
  return reason.title + '.' + (reason.errors.length || !reason.detail ? '' : ' ' + reason.detail);
}

/** A fault in the words that stand beside the fields. */
export function faultWords(fault) {
  const name = LABELS[fault.pointer.split('/')[1]];
  if (fault.code === 'in-the-future') return name + ': it lies in the future by the clock of the service. Correct the day or the time.';
  return (name ? name + ': ' : '') + wordsOf(fault);
}

/**
 * A button that asks for the reason, and then takes back.
 *
 * @param key which test is meant
 * @param act takes it back for a reason; tells how
 */
function takeBack(key, act, again) {
  if (!undoing || undoing.key !== key) {
    return h('button', { type: 'button', id: 'undo-' + key, onclick: () => { undoing = { key, reason: 'entered by mistake' }; again(); } }, 'Undo this entry');
  }
  return h('form', {
    class: 'undo',
    onsubmit: async (event) => {
      event.preventDefault();
      const { reason } = undoing;
      undoing = null;
      const how = await act(reason.trim() || 'entered by mistake');
      announce(how === 'removed' ? 'Removed from this phone; it was never sent.' : 'Taken back; it stays in the log as void.');
      drainNow();
    },
  },
  h('label', { for: 'undo-reason' }, 'Why it does not count'),
  h('input', { id: 'undo-reason', maxlength: '500', value: undoing.reason, oninput: (e) => { undoing.reason = e.target.value; } }),
  h('div', { class: 'actions' },
    h('button', {}, 'Take it back'),
    h('button', { type: 'button', onclick: () => { undoing = null; again(); } }, 'Keep it')));
}
