// A film of a test, read on the phone: chosen, stepped through, tapped. Nothing of it leaves the phone; out comes a speed.

import { announce, h } from './dom.js';
import { parse } from './decimal.js';
import { NoSpeed, RATES, playsAt, plotted, really, speedOf } from './film.js';
import { toldBy } from './film-file.js';
import { foundAgain, grey, windowAt } from './film-follow.js';
import { shownOnFilm } from './speed.js';

const SVG = 'http://www.w3.org/2000/svg';
const FINGER = 2; // CSS pixels, one standard deviation of a tap
const LISTENED = 6; // frames from which the rate of the file is told
const PATIENCE = 3000; // ms until that is given up
const LATE = 700; // ms after a seek in which a new frame would have been shown
const FAR = 8; // frames followed at a time
const LOOKED_AT = 960; // pixels of the longer side in which an edge is followed
const HALF = 14; // pixels of those on either side of a tap
const SLOWLY = 0.2; // of the usual speed: every frame of a fast film is shown
const INCH = 0.0254; // m, exactly
const GRAPH = { width: 300, height: 170, left: 12, bottom: 28 };

const MODES = [
  ['scale', 'Two ends of the known length'],
  ['edge', 'The edge of the part that leaves'],
  ['other', 'An edge of the other part, if it moves too'],
];

const drawn = (name, attributes, ...children) => {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
};

const metres = (value) => Number(value.toPrecision(2)) + ' m';

/**
 * What reads a film.
 *
 * @param us whether lengths and speeds are in US units
 * @param diameter outer diameter of the airframe as the service says it, or null
 * @param found called with a speed and how good it is, or with null where there is none any more
 */
export function makeFilm({ us, diameter, found }) {
  const unit = us ? 'in' : 'mm';
  const perMetre = us ? 1 / INCH : 1000;
  let url = null;
  let name = '';
  let marks = { scale: [], edge: [], other: [] };
  let order = []; // in which marks were made
  let shownAt = 0; // s, in the file
  let wanted = null;
  let seeks = Promise.resolve();
  let speed = null;
  let tells = { plays: null, taken: null, uneven: false }; // the file of its rates
  let shows = null; // frames a second that this browser shows of it

  const file = h('input', { type: 'file', id: 'film-file', accept: 'video/*', 'aria-describedby': 'film-stays film-fault' });
  const fault = h('p', { id: 'film-fault', class: 'fault', role: 'status' });
  const video = h('video', { muted: true, playsinline: true, preload: 'auto', 'aria-label': 'The film' });
  video.muted = true;
  const overlay = drawn('svg', { class: 'film-marks', 'aria-hidden': 'true' });
  const inner = h('div', { class: 'film-inner' }, video, overlay);
  const stage = h('div', { class: 'film-stage', tabindex: '0', role: 'group', 'aria-label': 'The film; tap on it to set a mark' }, inner);
  const at = h('input', { type: 'range', id: 'film-at', min: '0', max: '1', step: 'any', value: '0' });
  const plays = h('select', { id: 'film-plays' }, RATES.map((rate) => h('option', { value: String(rate) }, String(rate))));
  const taken = h('select', { id: 'film-rate' }, RATES.map((rate) => h('option', { value: String(rate) }, String(rate))));
  const follows = h('p', { id: 'film-follows', class: 'small' });
  const asks = h('div', { id: 'film-asks', role: 'group', 'aria-label': 'At what rate the file plays' });
  const length = h('input', { id: 'film-length', inputmode: 'decimal', autocomplete: 'off', 'aria-describedby': 'film-length-hint', value: offered() });
  const modes = MODES.map(([word]) => h('input', { type: 'radio', name: 'film-mode', value: word, checked: word === 'scale' }));
  const told = h('p', { id: 'film-told', role: 'status' });
  const result = h('div', { id: 'film-result' });
  const nudges = [['←', 'left', -1, 0], ['→', 'right', 1, 0], ['↑', 'up', 0, -1], ['↓', 'down', 0, 1]].map(([sign, word, x, y]) => h('button', { type: 'button', 'aria-label': 'Last mark ' + word, onclick: () => nudge(x, y) }, sign));
  const reading = h('div', { id: 'film-reading', hidden: true },
    stage,
    h('div', { class: 'film-steps' },
      h('button', { type: 'button', id: 'film-back', onclick: () => step(-1) }, 'Frame back'),
      h('button', { type: 'button', id: 'film-on', onclick: () => step(1) }, 'Frame on'),
      h('button', { type: 'button', id: 'film-follow', onclick: follow }, 'Follow the edge'),
      h('button', { type: 'button', id: 'film-closer', 'aria-pressed': 'false', onclick: closer }, 'Closer')),
    h('div', { class: 'field' }, h('label', { for: 'film-at' }, 'Where in the film'), at),
    h('div', { class: 'film' },
      h('div', { class: 'field' }, h('label', { for: 'film-plays' }, 'The file plays at, frames a second'), plays),
      h('div', { class: 'field' }, h('label', { for: 'film-rate' }, 'It was taken at, frames a second'), taken),
      h('div', { class: 'field' }, h('label', { for: 'film-length' }, 'Known length, ' + unit), length, h('p', { id: 'film-length-hint', class: 'small' }, diameter ? 'The outer diameter is filled in.' : 'The outer diameter, say, as far away as the edge.'))),
    follows,
    asks,
    h('fieldset', { class: 'film-modes' }, h('legend', {}, 'What you tap'), MODES.map(([, label], i) => h('label', { class: 'check' }, modes[i], h('span', {}, label)))),
    told,
    h('div', { class: 'film-steps' }, nudges,
      h('button', { type: 'button', id: 'film-middle', onclick: () => set(video.videoWidth / 2, video.videoHeight / 2) }, 'Mark in the middle'),
      h('button', { type: 'button', id: 'film-undo', onclick: undo }, 'Take back the last mark')),
    result,
    h('details', {}, h('summary', {}, 'What spoils it'),
      h('ul', {},
        h('li', {}, 'The camera not square to the airframe: ten degrees askew read 1.5 % low, thirty 13 %.'),
        h('li', {}, 'A known length nearer to the camera than the edge, or farther: it has to be as far away.'),
        h('li', {}, 'The other part moving too: tap an edge of it as well, in the same frames.'),
        h('li', {}, 'A smeared edge: tap the same side of the smear each time.'),
        h('li', {}, 'Frames in which the shoulder is still in, or the harness already taut: tap between the two.'),
        h('li', {}, 'Parts that move along the short side of the picture: a phone reads its picture line by line, so hold it such that they move along the long side.'))));
  const element = h('fieldset', { class: 'film-reader' }, h('legend', {}, 'Or measured on a film'),
    h('p', { class: 'flag' }, 'No film is a reason to stand nearer: prop the phone up, start it, go back, and fire from as far away as ever.'),
    h('div', { class: 'field' }, h('label', { for: 'film-file' }, 'The film'), file, h('p', { id: 'film-stays', class: 'small' }, 'It stays on this phone; nothing of it is sent.'), fault),
    reading);

  function offered() {
    if (!diameter) return '';
    const toMetres = { mm: 0.001, cm: 0.01, m: 1, in: INCH, ft: 12 * INCH }[diameter.unit];
    return toMetres ? String(Number((diameter.value * toMetres * perMetre).toPrecision(4))) : '';
  }

  const mode = () => modes.find((each) => each.checked).value;
  const choose = (word) => modes.forEach((each) => { each.checked = each.value === word; });

  // --- the film ---

  async function open(chosen) {
    forget();
    if (!chosen) return;
    name = chosen.name;
    if (chosen.type && !chosen.type.startsWith('video/')) {
      fault.textContent = '“' + name + '” is no film.';
      return;
    }
    url = URL.createObjectURL(chosen);
    const mine = url;
    try {
      const said = toldBy(chosen);
      await loaded(mine);
      reading.hidden = false;
      const { times, ended } = await framesShown();
      if (url !== mine) return;
      const duration = video.duration;
      if (ended && times.length < 3) throw new NoSpeed('“' + name + '” has fewer than three frames.');
      const told = await said;
      if (url !== mine) return;
      tells = told;
      shows = playsAt(times);
      plays.value = nearest(Math.max(tells.plays || 0, shows || 0) || 30); // frames are left out, and none are made up
      taken.value = tells.taken ? nearest(tells.taken) : plays.value;
      at.max = String(duration);
      await show(0);
      tell();
    } catch (failure) {
      if (url !== mine) return;
      forget();
      fault.textContent = failure instanceof NoSpeed ? failure.message : 'This browser cannot play “' + chosen.name + '”.';
    }
  }

  function loaded(source) {
    return new Promise((resolve, reject) => {
      video.onloadeddata = () => {
        if (!video.videoWidth) reject(new NoSpeed('“' + name + '” has no picture.'));
        else if (!(video.duration > 0 && video.duration < 3600)) reject(new NoSpeed('“' + name + '” does not tell how long it is, or is longer than an hour: cut it to the firing.'));
        else {
          overlay.setAttribute('viewBox', '0 0 ' + video.videoWidth + ' ' + video.videoHeight);
          resolve();
        }
      };
      video.onerror = () => reject(new Error());
      video.src = source;
    });
  }

  /** Times of the first frames, in seconds of the file, and whether there are no more; none where this browser does not tell. */
  function framesShown() {
    if (!video.requestVideoFrameCallback) return Promise.resolve({ times: [], ended: false });
    return new Promise((resolve) => {
      const times = [];
      let over = false;
      const end = () => {
        if (over) return;
        over = true;
        clearTimeout(timer);
        video.onended = null;
        video.pause();
        video.playbackRate = 1;
        resolve({ times, ended: video.ended });
      };
      const timer = setTimeout(end, PATIENCE);
      const take = (_, frame) => {
        if (over) return;
        if (frame.mediaTime > (times.length ? times[times.length - 1] : -1)) times.push(frame.mediaTime);
        if (times.length >= LISTENED) end();
        else video.requestVideoFrameCallback(take);
      };
      video.requestVideoFrameCallback(take);
      video.onended = end;
      video.playbackRate = SLOWLY;
      video.play().catch(end);
    });
  }

  const nearest = (rate) => String(RATES.reduce((best, each) => (Math.abs(each - rate) < Math.abs(best - rate) ? each : best)));

  /** Shows the frame at a time of the file, and answers with when that frame begins. */
  function show(time) {
    wanted = time;
    seeks = seeks.then(async () => {
      if (wanted !== time || !url) return;
      const clamped = Math.min(Math.max(time, 0), Math.max(0, video.duration - 0.0005));
      const began = await seek(clamped);
      if (began !== null) shownAt = began;
      else if (!video.requestVideoFrameCallback) shownAt = Math.floor(clamped * Number(plays.value) + 1e-6) / Number(plays.value);
      at.value = String(shownAt);
      draw();
    });
    return seeks;
  }

  /** When the frame shown begins; null where no new one came or this browser does not tell. */
  function seek(time) {
    return new Promise((resolve) => {
      let timer = 0;
      const done = (began) => {
        clearTimeout(timer);
        resolve(began);
      };
      const shown = (_, frame) => {
        if (frame.mediaTime <= time + 0.002) done(frame.mediaTime);
        else video.requestVideoFrameCallback(shown); // one of before the seek
      };
      if (video.requestVideoFrameCallback) video.requestVideoFrameCallback(shown);
      video.addEventListener('seeked', () => { timer = setTimeout(() => done(null), video.requestVideoFrameCallback ? LATE : 0); }, { once: true });
      video.currentTime = time;
    });
  }

  /** The next frame, or the one before; past times of which the film left out the frames. */
  async function step(direction) {
    const frame = 1 / Number(plays.value);
    const from = shownAt;
    for (let i = 0; i < 6 && shownAt === from; i++) {
      const target = from + (direction > 0 ? i + 1.5 : -0.5 - i) * frame;
      if (target < 0 || target > video.duration) return;
      await show(target);
    }
  }

  function closer() {
    const closely = inner.classList.toggle('closer');
    document.getElementById('film-closer').setAttribute('aria-pressed', String(closely));
    const last = lastMark();
    const middle = last || { x: video.videoWidth / 2, y: video.videoHeight / 2 };
    stage.scrollLeft = (middle.x / video.videoWidth) * inner.clientWidth - stage.clientWidth / 2;
    stage.scrollTop = (middle.y / video.videoHeight) * inner.clientHeight - stage.clientHeight / 2;
    tell();
  }

  // --- marks ---

  const lastMark = () => (order.length ? marks[order[order.length - 1]].slice(-1)[0] : null);

  /** A mark of an edge, in the place of one in the same frame. */
  function put(kind, mark) {
    const there = marks[kind].findIndex((each) => each.at === mark.at);
    if (there >= 0) {
      marks[kind].splice(there, 1);
      order.splice(order.lastIndexOf(kind), 1);
    }
    marks[kind].push(mark);
    order.push(kind);
  }

  function set(x, y) {
    const kind = mode();
    const mark = { at: shownAt, x, y };
    if (kind === 'scale') {
      if (marks.scale.length === 2) {
        marks.scale = [];
        order = order.filter((each) => each !== 'scale');
      }
      marks.scale.push(mark);
      order.push(kind);
    } else put(kind, mark);
    if (kind === 'scale' && marks.scale.length === 2 && marks.edge.length === 0) choose('edge');
    draw();
    tell();
    if (kind !== 'scale') step(1);
  }

  /** Looks for what was tapped last in the frames that follow; each mark found can be moved or taken back like any. */
  async function follow() {
    const kind = mode();
    const made = kind === 'scale' ? [] : [...marks[kind]].sort((a, b) => a.at - b.at);
    if (made.length < 2) {
      told.textContent = 'Tap the edge in two frames first, then it can be followed.';
      return;
    }
    let [before, last] = made.slice(-2);
    const scale = Math.min(1, LOOKED_AT / Math.max(video.videoWidth, video.videoHeight));
    await show(last.at + 0.5 / Number(plays.value));
    const pattern = windowAt(pixels(scale), last.x * scale, last.y * scale, HALF);
    const off = pattern ? { x: last.x * scale - pattern.x, y: last.y * scale - pattern.y } : null;
    let count = 0;
    while (pattern && count < FAR) {
      await step(1);
      if (shownAt <= last.at) break;
      const passed = (shownAt - last.at) / (last.at - before.at);
      const way = { x: (last.x - before.x) * passed * scale, y: (last.y - before.y) * passed * scale };
      const guess = { x: last.x * scale + way.x - off.x, y: last.y * scale + way.y - off.y };
      const place = foundAgain(pixels(scale), pattern, guess, { x: 6 + Math.abs(way.x) / 3, y: 6 + Math.abs(way.y) / 3 });
      if (!place) break;
      before = last;
      last = { at: shownAt, x: (place.x + off.x) / scale, y: (place.y + off.y) / scale };
      put(kind, last);
      count++;
    }
    draw();
    tell();
    if (count === 0) told.textContent = 'The edge was not found again: go on by hand. ' + told.textContent;
  }

  /** The frame shown, in grey. */
  function pixels(scale) {
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(video.videoWidth * scale);
    canvas.height = Math.round(video.videoHeight * scale);
    const drawing = canvas.getContext('2d', { willReadFrequently: true });
    drawing.drawImage(video, 0, 0, canvas.width, canvas.height);
    return grey(drawing.getImageData(0, 0, canvas.width, canvas.height));
  }

  function nudge(x, y) {
    const mark = lastMark();
    if (!mark) return;
    mark.x = Math.min(Math.max(mark.x + x, 0), video.videoWidth);
    mark.y = Math.min(Math.max(mark.y + y, 0), video.videoHeight);
    if (mark.at !== shownAt) show(mark.at + 0.5 / Number(plays.value));
    draw();
    tell();
  }

  function undo() {
    const kind = order.pop();
    if (!kind) return;
    const mark = marks[kind].pop();
    choose(kind);
    show(mark.at + 0.5 / Number(plays.value));
    tell();
  }

  function draw() {
    const size = Math.max(6, video.videoWidth / 60);
    const cross = (mark, css) => drawn('path', { class: css, d: 'M' + (mark.x - size) + ' ' + mark.y + 'h' + 2 * size + 'M' + mark.x + ' ' + (mark.y - size) + 'v' + 2 * size });
    const parts = [];
    for (const [kind, made] of Object.entries(marks)) {
      for (const mark of made) {
        const css = 'film-mark ' + kind + (kind === 'scale' || mark.at === shownAt ? ' here' : '');
        parts.push(cross(mark, css + ' under'), cross(mark, css));
      }
    }
    overlay.replaceChildren(...parts);
  }

  // --- what follows ---

  function tell() {
    const ratio = Number(taken.value) / Number(plays.value);
    follows.textContent = (tells.plays || shows ? '' : 'Neither file nor browser tells at what rate the file plays: look into the camera’s settings. ')
      + (tells.taken ? 'The file says that it was taken at ' + tells.taken + ' frames a second. ' : '')
      + (ratio === 1 ? 'Then the film runs as fast as it was.' + (tells.taken ? '' : ' A slow-motion film plays at 30 and was taken at 120 or 240: choose that.') : 'Then the film runs ' + Number(ratio.toPrecision(3)) + ' times slower than it was.')
      + (tells.uneven ? ' Parts of this file play at different rates: keep all taps within one part.' : '');
    const known = parse(length.value);
    const timed = (made) => [...made].sort((a, b) => a.at - b.at).map((mark) => ({ t: really(mark.at, Number(plays.value), Number(taken.value)), x: mark.x, y: mark.y }));
    try {
      speed = speedOf({
        edge: timed(marks.edge), other: timed(marks.other), scale: marks.scale, metres: known === null ? NaN : Number(known) / perMetre,
        tapSd: Math.max(1, (FINGER * video.videoWidth) / Math.max(1, inner.clientWidth)),
      });
      const shown = shownOnFilm(speed, us);
      told.textContent = shown.speed + (us ? ' ft/s' : ' m/s') + ', good to ' + shown.percent + ' %. It stands in the field above; more frames, further apart, make it better.';
      result.replaceChildren(graph(), otherwise());
      ask();
      found(shown);
      announce(told.textContent);
    } catch (failure) {
      if (!(failure instanceof NoSpeed)) throw failure;
      told.textContent = failure.message;
      result.replaceChildren();
      if (speed) found(null);
      speed = null;
      ask();
    }
  }

  const inWords = (metresPerSecond) => shownOnFilm({ ...speed, metresPerSecond }, us).speed + (us ? ' ft/s' : ' m/s');

  /** Where file and browser disagree on how fast the file plays: which is right, and what follows from each. */
  function ask() {
    if (!tells.plays || !shows || tells.plays === shows) {
      asks.replaceChildren();
      return;
    }
    const here = Number(plays.value);
    asks.replaceChildren(
      h('p', { class: 'flag' }, 'The file says that it plays at ' + tells.plays + ' frames a second, this browser shows ' + shows + '. '
        + (shows < tells.plays ? 'A busy phone leaves frames out, and then the file is right. If the film looks slowed on this page, take the other.' : 'It plays the film faster than the file says: then what it shows is right.')),
      h('div', { class: 'film-steps' }, [tells.plays, shows].map((rate) => h('button', {
        type: 'button', 'data-plays': String(rate), 'aria-pressed': String(nearest(rate) === plays.value),
        onclick: () => { plays.value = nearest(rate); tell(); },
      }, 'It plays at ' + rate + (speed ? ': ' + inWords((speed.metresPerSecond * here) / rate) : '')))));
  }

  /** What each rate would make of it: who took the film knows which is right. */
  function otherwise() {
    const here = Number(taken.value);
    const others = [30, 60, 120, 240].filter((rate) => rate !== here);
    return h('div', { class: 'film-rates' }, h('p', { class: 'small' }, 'Taken at ' + here + ' frames a second, that is. Tap another rate if it was that one:'),
      h('div', { class: 'film-steps' }, others.map((rate) => h('button', { type: 'button', 'data-rate': String(rate), onclick: () => { taken.value = String(rate); tell(); } },
        inWords((speed.metresPerSecond * rate) / here) + ' if taken at ' + rate))));
  }

  function graph() {
    const { points, line, across, up } = plotted(speed.motion, speed.perPixel, GRAPH);
    const text = (x, y, anchor, words) => drawn('text', { x, y, 'text-anchor': anchor }, words);
    const low = GRAPH.height - GRAPH.bottom;
    return h('figure', { class: 'film-graph' },
      drawn('svg', { viewBox: '0 0 ' + GRAPH.width + ' ' + GRAPH.height, role: 'img', 'aria-label': 'Place against time: ' + points.length + ' frames and the ' + (speed.motion.bent ? 'parabola' : 'line') + ' through them, ' + metres(up.metres) + ' in ' + Number((1000 * across.seconds).toPrecision(2)) + ' ms' },
        drawn('path', { class: 'film-axes', d: 'M' + GRAPH.left + ' 4V' + low + 'H' + (GRAPH.width - 4) }),
        drawn('path', { class: 'film-line', d: line.map(({ x, y }, i) => (i ? 'L' : 'M') + x.toFixed(1) + ' ' + y.toFixed(1)).join('') }),
        ...points.map(({ x, y }) => drawn('circle', { class: 'film-point', cx: x.toFixed(1), cy: y.toFixed(1), r: 4 })),
        text(GRAPH.left + 6, 16, 'start', metres(up.metres)),
        text(across.to, GRAPH.height - 8, 'end', Number((1000 * across.seconds).toPrecision(2)) + ' ms')),
      h('figcaption', {}, speed.motion.bent ? 'Place against time. It bends: the speed is that of the first frame tapped.' : 'Place against time.'));
  }

  function forget() {
    if (url) URL.revokeObjectURL(url);
    url = null;
    video.onended = null;
    video.onerror = null;
    video.removeAttribute('src');
    marks = { scale: [], edge: [], other: [] };
    order = [];
    speed = null;
    wanted = null;
    shownAt = 0;
    tells = { plays: null, taken: null, uneven: false };
    shows = null;
    asks.replaceChildren();
    fault.textContent = '';
    told.textContent = '';
    result.replaceChildren();
    overlay.replaceChildren();
    choose('scale');
    reading.hidden = true;
  }

  stage.addEventListener('click', (event) => {
    const box = video.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * video.videoWidth;
    const y = ((event.clientY - box.top) / box.height) * video.videoHeight;
    if (x >= 0 && y >= 0 && x <= video.videoWidth && y <= video.videoHeight) set(x, y);
    else told.textContent = 'That tap lay outside the picture.';
  });
  file.addEventListener('change', () => open(file.files[0]));
  at.addEventListener('input', () => show(Number(at.value)));
  for (const each of [plays, taken, length]) each.addEventListener('input', tell);

  return {
    element,
    forget() {
      file.value = '';
      forget();
    },
  };
}
