// Films of a section that leaves, made by the browser itself: drawn, encoded as VP8 and put into a WebM file whose times are exact.
// Then what a person does with one: choosing it, going to the frames and tapping edges as they are seen, with a finger's scatter.

const WIDTH = 640;
const HEIGHT = 360;
const UNIT = 1e-5; // s; times in the file

/** A generator with a seed: linear congruence and polar form as in Numerical Recipes, 2nd ed., ch. 7. */
function generator(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  return { uniform, normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()) };
}

// --- a file: elements of EBML (RFC 8794) as Matroska (RFC 9559) names them ---

const number = (value, bytes) => Uint8Array.from({ length: bytes }, (_, i) => Math.floor(value / 256 ** (bytes - 1 - i)) % 256);
const real = (value) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  return new Uint8Array(view.buffer);
};
const letters = (text) => new TextEncoder().encode(text);
const joined = (parts) => {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};
const element = (id, ...parts) => {
  const content = joined(parts);
  const name = number(id, id > 0xffffff ? 4 : id > 0xffff ? 3 : id > 0xff ? 2 : 1);
  return joined([name, Uint8Array.of(1), number(content.length, 7), content]);
};

/** A WebM file of key frames at times in seconds. */
function webm(frames, seconds) {
  const header = element(0x1a45dfa3, element(0x4286, number(1, 1)), element(0x42f7, number(1, 1)), element(0x42f2, number(4, 1)), element(0x42f3, number(8, 1)), element(0x4282, letters('webm')), element(0x4287, number(4, 1)), element(0x4285, number(2, 1)));
  const info = element(0x1549a966, element(0x2ad7b1, number(UNIT * 1e9, 4)), element(0x4489, real(seconds / UNIT)), element(0x4d80, letters('test')), element(0x5741, letters('test')));
  const video = element(0xe0, element(0xb0, number(WIDTH, 2)), element(0xba, number(HEIGHT, 2)));
  const tracks = element(0x1654ae6b, element(0xae, element(0xd7, number(1, 1)), element(0x73c5, number(1, 1)), element(0x9c, number(0, 1)), element(0x83, number(1, 1)), element(0x86, letters('V_VP8')), video));
  const ticks = frames.map(({ at }) => Math.round(at / UNIT));
  const clusters = frames.map(({ data }, i) => element(0x1f43b675, element(0xe7, number(ticks[i], 4)), element(0xa3, Uint8Array.of(0x81, 0, 0, 0x80), data)));
  const cues = (places) => element(0x1c53bb6b, ...places.map((place, i) => element(0xbb, element(0xb3, number(ticks[i], 4)), element(0xb7, element(0xf7, number(1, 1)), element(0xf1, number(place, 6))))));
  let place = info.length + tracks.length + cues(frames.map(() => 0)).length;
  const places = clusters.map((cluster) => {
    const here = place;
    place += cluster.length;
    return here;
  });
  return new Blob([header, element(0x18538067, info, tracks, cues(places), ...clusters)], { type: 'video/webm' });
}

// --- and as MP4: boxes of ISO/IEC 14496-12 ---

const box = (type, ...parts) => {
  const content = joined(parts);
  return joined([number(content.length + 8, 4), typeof type === 'number' ? number(type, 4) : letters(type), content]);
};
const full = (type, flags, ...parts) => box(type, number(flags, 4), ...parts);
const PER_SECOND = 90000;
const MATRIX = [0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000].map((value) => number(value, 4));

/** An MP4 file of VP9 key frames; says what it was taken at, or plays slower by an edit list, where the film asks for that. */
function mp4(frames, seconds, film) {
  const ticks = [...frames.map(({ at }) => Math.round(at * PER_SECOND)), Math.round(seconds * PER_SECOND)];
  const all = number(ticks[ticks.length - 1], 4);
  const entry = box('vp09', number(1, 8), number(0, 16), number(WIDTH, 2), number(HEIGHT, 2), number(0x480000, 4), number(0x480000, 4), number(0, 4), number(1, 2), number(0, 32), number(0x18, 2), number(0xffff, 2),
    full('vpcC', 0x01000000, Uint8Array.of(0, 10, 0x82, 2, 2, 2, 0, 0)));
  const float = new DataView(new ArrayBuffer(4));
  float.setFloat32(0, film.taken);
  const told = film.told ? [box('meta', full('hdlr', 0, number(0, 4), letters('mdta'), number(0, 13)), full('keys', 0, number(1, 4), box('mdta', letters('com.android.capture.fps'))),
    box('ilst', box(1, box('data', number(23, 4), number(0, 4), new Uint8Array(float.buffer)))))] : [];
  const edits = film.slowed ? [box('edts', full('elst', 0, number(1, 4), all, number(0, 4), number(film.slowed * 65536, 4)))] : [];
  const movie = (place) => box('moov',
    full('mvhd', 0, number(0, 8), number(PER_SECOND, 4), all, number(0x10000, 4), number(0x100, 2), number(0, 10), ...MATRIX, number(0, 24), number(2, 4)),
    box('trak', full('tkhd', 3, number(0, 8), number(1, 4), number(0, 4), all, number(0, 16), ...MATRIX, number(WIDTH * 65536, 4), number(HEIGHT * 65536, 4)), ...edits,
      box('mdia', full('mdhd', 0, number(0, 8), number(PER_SECOND, 4), all, number(0x55c4, 2), number(0, 2)), full('hdlr', 0, number(0, 4), letters('vide'), number(0, 13)),
        box('minf', full('vmhd', 1, number(0, 8)), box('dinf', full('dref', 0, number(1, 4), full('url ', 1))),
          box('stbl', full('stsd', 0, number(1, 4), entry),
            full('stts', 0, number(frames.length, 4), ...frames.flatMap((_, i) => [number(1, 4), number(ticks[i + 1] - ticks[i], 4)])),
            full('stsc', 0, number(1, 4), number(1, 4), number(frames.length, 4), number(1, 4)),
            full('stsz', 0, number(0, 4), number(frames.length, 4), ...frames.map(({ data }) => number(data.length, 4))),
            full('stco', 0, number(1, 4), number(place, 4)))))), ...told);
  const head = box('ftyp', letters('isom'), number(0, 4), letters('isommp42'));
  return new Blob([head, movie(head.length + movie(0).length + 8), box('mdat', ...frames.map(({ data }) => data))], { type: 'video/mp4' });
}

async function encoded(draw, times, codec) {
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  const drawing = canvas.getContext('2d', { willReadFrequently: true });
  const frames = [];
  let trouble = null;
  const encoder = new VideoEncoder({
    output: (chunk) => {
      const data = new Uint8Array(chunk.byteLength);
      chunk.copyTo(data);
      frames.push(data);
    },
    error: (failure) => { trouble = failure; },
  });
  encoder.configure({ codec, width: WIDTH, height: HEIGHT, bitrate: 8e6 });
  for (let i = 0; i < times.length; i++) {
    draw(drawing, i);
    const frame = new VideoFrame(canvas, { timestamp: i * 1000 });
    encoder.encode(frame, { keyFrame: true });
    frame.close();
  }
  await encoder.flush();
  encoder.close();
  if (trouble) throw trouble;
  return frames.map((data, i) => ({ data, at: times[i] }));
}

/** Where the edge of the part that leaves is, in pixels, so many real seconds after it left. */
const edgeAt = (film, seconds) => film.x0 + (Math.max(0, seconds) * film.speed * Math.cos(film.tilt)) / film.perPixel;

/**
 * A film of a section that leaves to the right.
 *
 * @param film mp4 for that kind of file, told if that says what it was taken at, slowed by what its edit list plays it slower; speed in m/s, taken and plays in frames a second, perPixel in m, tilt of the camera in radians, blur as a share of the
 *     time between two frames, noise in grey levels, dropped frames by number, frames, leaves at which frame
 */
async function make(film) {
  const { uniform } = generator(film.seed);
  const kept = Array.from({ length: film.frames }, (_, i) => i).filter((i) => !film.dropped.includes(i));
  const half = film.diameter / film.perPixel / 2;
  const one = (drawing, edge) => {
    drawing.fillStyle = '#b9c4c9';
    drawing.fillRect(0, 0, WIDTH, HEIGHT);
    drawing.fillStyle = '#5a4638';
    drawing.fillRect(0, HEIGHT / 2 - half, film.x0, 2 * half);
    drawing.fillStyle = '#8c1d1d';
    drawing.fillRect(edge, HEIGHT / 2 - half, WIDTH, 2 * half);
  };
  const draw = (drawing, n) => {
    const moments = film.blur > 0 ? 12 : 1;
    for (let k = 0; k < moments; k++) {
      drawing.globalAlpha = 1 / (k + 1);
      one(drawing, edgeAt(film, (kept[n] - film.leaves + film.blur * ((k + 0.5) / moments - 0.5)) / film.taken));
    }
    drawing.globalAlpha = 1;
    const noise = drawing.getImageData(0, 0, WIDTH, HEIGHT);
    for (let i = 0; i < noise.data.length; i += 4) {
      const more = film.noise * (uniform() + uniform() + uniform() - 1.5) * 2;
      noise.data[i] += more;
      noise.data[i + 1] += more;
      noise.data[i + 2] += more;
    }
    drawing.putImageData(noise, 0, 0);
  };
  const times = kept.map((i) => i / film.plays);
  const seconds = film.frames / film.plays;
  return film.mp4 ? mp4(await encoded(draw, times, 'vp09.00.10.08'), seconds, film) : webm(await encoded(draw, times, 'vp8'), seconds);
}

// --- a person ---

const find = (id) => document.getElementById(id);
const pause = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });

async function until(holds, what) {
  for (let i = 0; i < 1000; i++) {
    if (holds()) return;
    await pause(20);
  }
  throw new Error('waited in vain until ' + what);
}

async function choose(blob, name) {
  const files = new DataTransfer();
  files.items.add(new File([blob], name, { type: blob.type }));
  find('film-file').files = files.files;
  find('film-file').dispatchEvent(new Event('change'));
  await until(() => find('film-fault').textContent || (!find('film-reading').hidden && find('film-told').textContent), 'the film is read');
  return find('film-fault').textContent;
}

function tap(x, y) {
  const video = document.querySelector('.film-inner video');
  const box = video.getBoundingClientRect();
  video.dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: box.left + (x / video.videoWidth) * box.width, clientY: box.top + (y / video.videoHeight) * box.height }));
}

function give(id, value) {
  find(id).value = String(value);
  find(id).dispatchEvent(new Event('input', { bubbles: true }));
}

/** Where the edge is seen in the frame shown: between the light gap and the dark part; null where there is none. */
function seen(film) {
  const video = document.querySelector('.film-inner video');
  const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
  const drawing = canvas.getContext('2d', { willReadFrequently: true });
  drawing.drawImage(video, 0, 0);
  const rows = 21;
  const { data } = drawing.getImageData(0, HEIGHT / 2 - 10, WIDTH, rows);
  const green = Array.from({ length: WIDTH }, (_, x) => {
    let sum = 0;
    for (let y = 0; y < rows; y++) sum += data[4 * (y * WIDTH + x) + 1];
    return sum / rows;
  });
  const middle = (0xc4 + 0x1d) / 2;
  for (let x = Math.ceil(film.x0) + 3; x < WIDTH - 3; x++) {
    if (green[x] > middle && green[x + 1] <= middle) return x + 0.5 + (green[x] - middle) / (green[x] - green[x + 1]);
  }
  return null;
}

/** Reads a film as a person would, tapping with a scatter given in CSS pixels. */
async function readFilm(film, scatter) {
  const { normal } = generator(film.seed + 1);
  const said = await choose(await make(film), film.mp4 ? 'film.mp4' : 'film.webm');
  if (said) return { said };
  const plays = Number(find('film-plays').value);
  give('film-rate', film.taken);
  if (find('film-closer').getAttribute('aria-pressed') === 'false') find('film-closer').click();
  const finger = scatter * (WIDTH / document.querySelector('.film-inner').clientWidth);
  give('film-length', (1000 * film.diameter * film.stated).toFixed(1)); // as one reads it off a calliper
  const half = film.diameter / film.perPixel / 2;
  give('film-at', (film.leaves + film.skipped + 0.5) / film.plays);
  const at = () => Number(find('film-at').value);
  await until(() => Math.abs(at() - (film.leaves + film.skipped) / film.plays) < 1e-3, 'the first frame is shown');
  tap(film.x0 / 2, HEIGHT / 2 - half + finger * normal());
  tap(film.x0 / 2, HEIGHT / 2 + half + finger * normal());
  let tapped = 0;
  for (let i = 0; i < film.taps; i++) {
    const edge = seen(film);
    if (edge === null || edge > WIDTH - 12) break;
    const before = at();
    tap(edge + finger * normal(), HEIGHT / 2 + finger * normal());
    tapped++;
    for (let wait = 0; wait < 60 && at() === before; wait++) await pause(20);
    if (at() === before) break;
  }
  return { plays, tapped, told: find('film-told').textContent, speed: Number(find('speed').value), percent: Number(find('uncertainty').value) };
}

/** Reads a film as a person would who taps the edge twice and lets it be followed. */
async function followed(film, scatter) {
  const read = { ...film, taps: 2 };
  const first = await readFilm(read, scatter);
  if (first.said) return first;
  find('film-follow').click();
  await until(() => /good to|goes backwards|not found again/.test(find('film-told').textContent), 'the edge is followed');
  return { ...first, told: find('film-told').textContent, marks: document.querySelectorAll('.film-mark.edge.under').length, speed: Number(find('speed').value), percent: Number(find('uncertainty').value) };
}

/** From a film just chosen to its speed with as few taps as there may be; counts them. */
async function quickly(film, scatter) {
  const { normal } = generator(film.seed + 1);
  const said = await choose(await make(film), film.mp4 ? 'film.mp4' : 'film.webm');
  if (said) return { said };
  let taps = 0;
  const finger = scatter * (WIDTH / document.querySelector('.film-inner').clientWidth);
  const half = film.diameter / film.perPixel / 2;
  const at = () => Number(find('film-at').value);
  give('film-at', (film.leaves + film.skipped + 0.5) / film.plays);
  taps++;
  await until(() => Math.abs(at() - (film.leaves + film.skipped) / film.plays) < 1e-3, 'the first frame is shown');
  for (const end of [-half, half]) {
    tap(film.x0 / 2, HEIGHT / 2 + end + finger * normal());
    taps++;
  }
  for (let i = 0; i < 2; i++) {
    const before = at();
    tap(seen(film) + finger * normal(), HEIGHT / 2 + finger * normal());
    taps++;
    await until(() => at() !== before, 'the next frame is shown');
  }
  find('film-follow').click();
  taps++;
  await until(() => /good to|goes backwards|not found again/.test(find('film-told').textContent), 'the edge is followed');
  if (Number(find('film-rate').value) !== film.taken) {
    document.querySelector('[data-rate="' + film.taken + '"]').click();
    taps++;
  }
  return { taps, follows: find('film-follows').textContent, asked: find('film-asks').textContent, told: find('film-told').textContent, speed: Number(find('speed').value), percent: Number(find('uncertainty').value) };
}

/** A film of any kind that a builder may take, of which three frames or more show the edge. */
function any(seed) {
  const { uniform } = generator(7919 * seed + 13);
  for (let i = 0; i < 6; i++) uniform();
  for (;;) {
    const taken = [30, 60, 120, 240][Math.floor(4 * uniform())];
    const film = {
      seed, taken, plays: taken > 60 && uniform() < 0.5 ? 30 : taken, speed: 2 + 23 * uniform(), perPixel: 0.0008 + 0.0004 * uniform(),
      diameter: 0.098, stated: 1 + 0.01 * (2 * uniform() - 1), tilt: (uniform() * 10 * Math.PI) / 180, blur: 0.3 * uniform(), noise: 12 * uniform(), x0: 90, leaves: 3, skipped: 1, taps: 8, dropped: [],
    };
    const inView = Math.floor(((WIDTH - 110 - film.x0) * film.perPixel * taken) / film.speed);
    film.frames = film.leaves + Math.min(inView, 10) + 2;
    if (inView > 5 && uniform() < 0.4) film.dropped = [film.leaves + 3];
    if (inView >= 4) return film;
  }
}
