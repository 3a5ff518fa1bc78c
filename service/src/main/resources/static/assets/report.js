// The report of one test: prefilled from the plan, kept while it is typed, written down before anything is sent.

import { announce, h, mark } from './dom.js';
import { chargeCaution, chargeFault } from './plan.js';
import { parse, shown, step } from './decimal.js';
import { newKey, save } from './outbox.js';
import { get, write } from './store.js';
import { makeFilm } from './film-reader.js';
import { filmed, thrown, uncertaintyFault } from './speed.js';
import { firedNow, localText, withOffset } from './time.js';

const OUTCOMES = [
  ['none', 'None', 'did not part'],
  ['partial', 'Partial', 'moved, not fully apart'],
  ['separated', 'Separated', 'fully apart, gear out'],
];

const HELD = [['', 'not said'], ['vial', 'a vial'], ['tube', 'a tube'], ['bag', 'a bag']];

const OCCASIONS = [['ground', 'On the ground, as a test'], ['flight', 'In flight']];

/**
 * The form of a joint.
 *
 * @param draft what was half filled in, or undefined
 * @param whenSaved called after a test is safely on the phone
 */
export function makeForm(joint, draft, whenSaved) {
  const unit = joint.measure.unit;
  const us = joint.units === 'us';
  const speedUnit = us ? 'ft/s' : 'm/s';
  const lengthUnit = us ? 'in' : 'mm';
  const farUnit = us ? 'ft' : 'm';
  let corrects = (draft && draft.corrects) || null;
  let chargeTouched = Boolean(draft && draft.chargeTouched);
  let timeTouched = Boolean(draft && draft.timeTouched);
  let tapped = (draft && draft.tapped) || null;
  let planned = null; // the charge that the plan names, as text
  let known = joint; // the joint as this phone knows it now
  let asking = false; // whether the service is being asked
  let saving = false;
  let waiting = false; // saved as soon as the planned charge is here

  const charge = h('input', { id: 'charge', inputmode: 'decimal', autocomplete: 'off', 'aria-describedby': 'charge-fault', value: (draft && draft.charge) || '' });
  const fired = h('input', { id: 'fired', type: 'datetime-local', 'aria-describedby': 'fired-fault', value: draft && (draft.timeTouched || draft.tapped) ? draft.fired : localText(new Date()) });
  const damaged = h('input', { id: 'damaged', type: 'checkbox', checked: Boolean(draft && draft.damaged) });
  const notes = h('textarea', { id: 'notes', rows: '3', maxlength: '2000', value: (draft && draft.notes) || '' });
  const speed = h('input', { id: 'speed', inputmode: 'decimal', autocomplete: 'off', 'aria-describedby': 'speed-fault', value: (draft && draft.speed) || '' });
  const uncertainty = h('input', { id: 'uncertainty', inputmode: 'decimal', autocomplete: 'off', 'aria-describedby': 'uncertainty-hint uncertainty-fault', value: (draft && draft.uncertainty) || '' });
  const distance = h('input', { id: 'distance', inputmode: 'decimal', autocomplete: 'off', value: (draft && draft.distance) || '' });
  const frames = h('input', { id: 'frames', inputmode: 'numeric', autocomplete: 'off', value: (draft && draft.frames) || '' });
  const landed = h('input', { id: 'landed', inputmode: 'decimal', autocomplete: 'off', value: (draft && draft.landed) || '' });
  const height = h('input', { id: 'height', inputmode: 'decimal', autocomplete: 'off', 'aria-describedby': 'thrown-hint', value: (draft && draft.height) || '' });
  const rate = h('input', { id: 'rate', inputmode: 'decimal', autocomplete: 'off', value: (draft && draft.rate) || '' });
  const held = h('select', { id: 'containment' }, HELD.map(([word, label]) => h('option', { value: word }, label)));
  held.value = (draft && draft.containment) || '';
  const faults = Object.fromEntries(['outcome', 'charge', 'fired', 'speed', 'uncertainty', 'form'].map((n) => [n, h('p', { id: n + '-fault', class: 'fault' })]));
  const radios = OUTCOMES.map(([word]) => h('input', { type: 'radio', name: 'outcome', value: word, checked: Boolean(draft && draft.outcome === word), 'aria-describedby': 'outcome-fault' }));
  const occasions = OCCASIONS.map(([word]) => h('input', { type: 'radio', name: 'occasion', value: word, checked: word === ((draft && draft.occasion) || OCCASIONS[0][0]) }));
  const flown = () => occasions[1].checked;
  let onFilm = null; // the speed that stands in its field because a film says so
  const film = makeFilm({
    us, diameter: joint.outerDiameter || null,
    found(seen) {
      if (seen || speed.value === onFilm) {
        speed.value = seen ? seen.speed : '';
        uncertainty.value = seen ? seen.percent : '';
      }
      onFilm = seen && seen.speed;
      remember();
    },
  });
  const title = h('h2', { id: 'report-title' });
  const firedLabel = h('label', { for: 'fired' });
  const hint = h('p', { id: 'charge-hint', class: 'small' });
  const caution = h('p', { id: 'charge-caution', class: 'flag', role: 'status' });
  const button = h('button', { class: 'main-action' }, 'Save this test');
  const more = h('details', { open: Boolean(draft && (draft.notes || draft.speed || draft.distance || draft.landed || draft.containment)) });
  const chosen = () => (radios.find((r) => r.checked) || {}).value || null;

  const element = h('form', { id: 'report', novalidate: true, 'aria-labelledby': 'report-title' },
    title,
    h('fieldset', { class: 'outcomes' }, h('legend', { class: 'unseen' }, 'Outcome'),
      OUTCOMES.map(([word, label, meaning], i) => h('label', { class: 'outcome' }, radios[i], mark(word), h('span', {}, h('strong', {}, label), h('small', {}, meaning)))),
      faults.outcome),
    h('div', { class: 'field' }, h('label', { for: 'charge' }, 'Charge loaded, ' + unit),
      h('div', { class: 'stepper' },
        h('button', { type: 'button', 'aria-label': 'One step less', onclick: () => move(-1) }, '−'), charge,
        h('button', { type: 'button', 'aria-label': 'One step more', onclick: () => move(1) }, '+')),
      hint, caution, faults.charge),
    h('div', { class: 'field' }, firedLabel, fired, faults.fired),
    h('label', { class: 'check' }, damaged, h('span', {}, 'It broke something')),
    h('fieldset', { class: 'occasions' }, h('legend', {}, 'Where it was fired'),
      OCCASIONS.map(([, label], i) => h('label', { class: 'check' }, occasions[i], h('span', {}, label)))),
    more,
    h('div', { class: 'save' }, faults.form, button));
  more.append(h('summary', {}, 'Speed, powder and note'),
    h('div', { class: 'field' }, h('label', { for: 'speed' }, 'Speed of the parts, ' + speedUnit + ' (of a separated test)'), speed, faults.speed),
    h('div', { class: 'field' }, h('label', { for: 'uncertainty' }, 'Good to, percent of the speed'), uncertainty,
      h('p', { id: 'uncertainty-hint', class: 'small' }, 'Filled in by what was seen. One standard deviation; left empty, the speed counts as good to 10 %.'), faults.uncertainty),
    film.element,
    h('fieldset', { class: 'film' }, h('legend', {}, 'Or counted on a film'),
      h('div', { class: 'field' }, h('label', { for: 'distance' }, 'Moved, ' + lengthUnit), distance),
      h('div', { class: 'field' }, h('label', { for: 'frames' }, 'In frames'), frames),
      h('div', { class: 'field' }, h('label', { for: 'rate' }, 'Frames a second'), rate)),
    h('fieldset', { class: 'film' }, h('legend', {}, 'Or from where the nose first touched the ground'),
      h('div', { class: 'field' }, h('label', { for: 'landed' }, 'How far away, ' + farUnit), landed),
      h('div', { class: 'field' }, h('label', { for: 'height' }, 'Height of the joint, ' + farUnit), height),
      h('p', { id: 'thrown-hint', class: 'small' }, 'With the other part held fast and the harness slack. Air and harness make it read low: frames of a film tell more.')),
    h('div', { class: 'field' }, h('label', { for: 'containment' }, 'What held the powder'), held),
    h('div', { class: 'field' }, h('label', { for: 'notes' }, 'Note'), notes));

  function remember() {
    const record = {
      joint: joint.id, occasion: flown() ? 'flight' : 'ground', outcome: chosen(), charge: charge.value, chargeTouched, fired: fired.value, timeTouched, tapped, damaged: damaged.checked,
      notes: notes.value, speed: speed.value, uncertainty: uncertainty.value, distance: distance.value, frames: frames.value, rate: rate.value, landed: landed.value, height: height.value, containment: held.value, corrects,
    };
    return write(['drafts'], ([drafts]) => drafts.put(record)).catch(() => say('form', 'This phone does not keep what is typed; save soon.'));
  }

  /** A flight is told in the same words, but the plan names no charge for it. */
  function arrange() {
    title.textContent = flown() ? 'What did it do in flight?' : 'What did it do?';
    firedLabel.textContent = flown() ? 'Time of the event' : 'Time of firing';
    button.textContent = flown() ? 'Save this flight' : 'Save this test';
    const named = planned && (planned.flight || !flown()) ? planned.text : '';
    if (!chargeTouched && document.activeElement !== charge) charge.value = named; // never under the fingers of who types
    hint.textContent = 'Steps of ' + joint.measure.value + ' ' + unit + (named ? '; the plan names ' + named + ' ' + unit + '.' : '.');
  }

  /** The caution beside a charge beyond the ceiling that this phone knows. */
  function mind() {
    caution.textContent = chargeCaution(known, parse(charge.value), unit) || '';
  }

  function move(direction) {
    const now = parse(charge.value);
    charge.value = now === null ? joint.measure.value : step(now, joint.measure.value, direction);
    chargeTouched = true;
    say('charge', null);
    mind();
    announce(charge.value + ' ' + unit);
    remember();
  }

  function say(name, words) {
    faults[name].textContent = words || '';
    const field = { charge, fired, speed, uncertainty }[name];
    if (field) field.setAttribute('aria-invalid', words ? 'true' : 'false');
    return Boolean(words);
  }

  const numbers = (...fields) => fields.map((field) => Number(parse(field.value)));

  /** What was seen gives the speed, whichever way it was seen last. */
  function read(field) {
    const found = [landed, height].includes(field) ? thrown(...numbers(landed, height), us) : filmed(...numbers(distance, frames, rate), us);
    if (!found) return;
    speed.value = found.speed;
    uncertainty.value = found.percent || '';
  }

  element.addEventListener('input', (event) => {
    if (event.target === charge) {
      chargeTouched = true;
      waiting = false;
      mind();
    }
    if (event.target.name === 'occasion') arrange();
    if (event.target === fired) timeTouched = true;
    if (event.target.name === 'outcome') {
      say('outcome', null);
      if (!timeTouched) {
        tapped = firedNow();
        fired.value = localText(new Date());
      }
    }
    if (event.target === speed) uncertainty.value = ''; // it was that of another reading
    if ([distance, frames, rate, landed, height].includes(event.target)) read(event.target);
    remember();
  });

  // Emptied in one go, without a key pressed, it is in the flyer's hands too.
  charge.addEventListener('change', () => {
    if (charge.value === '') chargeTouched = true;
  });

  async function checked() {
    const fresh = (await get('joints', joint.id)) || joint;
    const number = parse(charge.value);
    const typedSpeed = speed.value.trim() === '' ? null : parse(speed.value);
    const when = timeTouched ? withOffset(fired.value) : tapped || firedNow();
    let wrong = say('outcome', chosen() ? null : 'Choose what it did.');
    wrong = say('charge', chargeFault(number)) || wrong;
    wrong = say('fired', when ? null : 'Give the day and the time it was fired.') || wrong;
    let speedFault = null;
    if (speed.value.trim() !== '' && typedSpeed === null) speedFault = 'Type the speed as a number, or leave it empty.';
    else if (typedSpeed !== null && chosen() !== 'separated') speedFault = 'Only a separated test has a speed: leave it empty.';
    const percent = parse(uncertainty.value);
    const uncertain = uncertaintyFault(uncertainty.value, percent === null ? null : Number(percent), typedSpeed !== null);
    if (speedFault || uncertain) more.open = true;
    wrong = say('speed', speedFault) || wrong;
    wrong = say('uncertainty', uncertain) || wrong;
    return wrong ? null : { fresh, number, typedSpeed, percent, when };
  }

  async function submit(event) {
    event.preventDefault();
    if (saving) return;
    if (chosen() && charge.value === '' && asking && !flown()) {
      waiting = true;
      say('form', 'Saved as soon as the planned charge is here; or type what was loaded.');
      announce(faults.form.textContent);
      return;
    }
    saving = true;
    button.disabled = true;
    try {
      const values = await checked();
      if (!values) {
        const first = element.querySelector('[aria-invalid=true]') || radios[0];
        first.focus();
        announce('Not saved: ' + Object.values(faults).map((f) => f.textContent).filter(Boolean).join(' '));
        return;
      }
      await save(entryOf(values), corrects);
      await saved();
    } catch (failure) {
      say('form', 'Not saved: this phone would not keep it (' + failure.message + '). Write it on paper.');
      announce(faults.form.textContent);
    } finally {
      saving = false;
      button.disabled = false;
    }
  }

  function entryOf({ fresh, number, typedSpeed, percent, when }) {
    const revision = fresh.advice ? fresh.advice.basis.setupRevision : null;
    const rest = {
      outcome: chosen(), firedAt: when, damaged: damaged.checked,
      ...(typedSpeed === null ? {} : { speed: { value: Number(typedSpeed), unit: speedUnit } }),
      ...(percent === null ? {} : { speedUncertaintyPercent: Number(percent) }),
      ...(revision === null ? {} : { setupRevision: revision }),
      ...(held.value === '' ? {} : { containment: held.value }),
      ...(notes.value.trim() === '' ? {} : { notes: notes.value.trim() }),
    };
    const body = '{"charge":{"value":' + number + ',"unit":' + JSON.stringify(unit) + '},' + JSON.stringify(rest).slice(1);
    return {
      key: newKey(), occasion: flown() ? 'flight' : 'ground', jointId: joint.id, title: joint.airframe + ', ' + joint.name, order: Date.now() + performance.now() / 1e6, body, charge: number, unit,
      outcome: rest.outcome, damaged: rest.damaged, firedAt: when, notes: rest.notes || '', speed: typedSpeed || '', uncertainty: percent || '', containment: held.value, revision, state: 'waiting', attempts: 0, undo: null,
    };
  }

  async function saved() {
    corrects = null;
    chargeTouched = false;
    charge.blur();
    timeTouched = false;
    tapped = null;
    occasions[0].checked = true;
    radios.forEach((r) => { r.checked = false; });
    damaged.checked = false;
    [notes, speed, uncertainty, distance, frames, rate, landed, height, held].forEach((f) => { f.value = ''; });
    film.forget();
    more.open = false;
    fired.value = localText(new Date());
    await whenSaved();
  }

  element.addEventListener('submit', submit);

  return {
    element,
    prefill(fresh, next, state) {
      known = fresh;
      asking = state === 'asking';
      const step = next.step && (next.step.charge || next.step.flightCharge) ? next.step : null;
      planned = step && { text: shown((step.charge || step.flightCharge).value, fresh.measure.value), flight: step.decision === 'stop' };
      arrange();
      if (charge.value !== '' && !chargeFault(parse(charge.value))) say('charge', null);
      if (waiting && (charge.value !== '' || !asking)) {
        waiting = false;
        say('form', null);
        element.requestSubmit();
      }
    },
    /** Turns to a flight, as long as nothing is typed. */
    fly() {
      if (chosen() || chargeTouched) return;
      occasions[1].checked = true;
      arrange();
    },
    correct(entry) {
      corrects = entry.key;
      chargeTouched = true;
      timeTouched = true;
      charge.value = entry.charge;
      fired.value = localText(new Date(entry.firedAt));
      damaged.checked = entry.damaged;
      notes.value = entry.notes;
      speed.value = entry.speed;
      uncertainty.value = entry.uncertainty || '';
      held.value = entry.containment || '';
      radios.forEach((r) => { r.checked = r.value === entry.outcome; });
      occasions.forEach((r) => { r.checked = r.value === (entry.occasion || 'ground'); });
      arrange();
      more.open = Boolean(entry.notes || entry.speed || entry.containment);
      remember();
      charge.focus();
    },
    tick() {
      if (!timeTouched && !tapped) fired.value = localText(new Date());
    },
  };
}
