// What a film's file tells of its rates: boxes of ISO/IEC 14496-12 (MP4) and of the QuickTime files that they come from (MOV). Knows
// nothing of a page; of any other file it tells nothing, and a broken one is one of these.

import { usual } from './film.js';

const LARGEST = 16 * 1024 * 1024; // bytes of the box that describes a film; hours of it take a tenth of that
const BOXES = 10000; // looked at before a file is given up
const CAPTURED = 'com.android.capture.fps'; // frames a second that a slow-motion film was taken at, as phones write it
const PLAUSIBLE = [10, 10000]; // frames a second
const SHARE = 0.1; // of the frames that a part of another rate has at least
const APART = 1.5; // ratio of rates that are not the same one

const NOTHING = { plays: null, taken: null, uneven: false };

/**
 * Frames a second that a film's file plays at and was taken at, each null where the file does not tell; and whether parts of it play at
 * different rates.
 */
export async function toldBy(file) {
  try {
    const movie = await movieOf(file);
    return movie ? ratesIn(movie) : NOTHING;
  } catch (failure) {
    if (failure instanceof RangeError) return NOTHING; // a box that ends before what it should hold
    throw failure;
  }
}

const view = async (file, from, to) => new DataView(await file.slice(from, to).arrayBuffer());

/** The content of the box that describes the film, wherever in the file it stands; null where there is none. */
async function movieOf(file) {
  let at = 0;
  for (let i = 0; i < BOXES && at + 8 <= file.size; i++) {
    const head = await view(file, at, at + 16);
    const { type, begins, size } = header(head, 0, file.size - at);
    if (i === 0 && !['ftyp', 'moov', 'mdat', 'free', 'skip', 'wide'].includes(type)) return null;
    if (size < begins) return null;
    if (type === 'moov') return size <= LARGEST ? view(file, at + begins, at + size) : null;
    at += size;
  }
  return null;
}

/** Type of the box at a place, where its content begins, counted from there, and its size, which may be all that is left. */
function header(data, at, left) {
  const small = data.getUint32(at);
  const size = small === 1 ? Number(data.getBigUint64(at + 8)) : small === 0 ? left : small;
  return { type: text(data, at + 4, 4), begins: small === 1 ? 16 : 8, size };
}

const text = (data, at, length) => String.fromCharCode(...new Uint8Array(data.buffer, data.byteOffset + at, length));

/** The boxes in a stretch of bytes: type and content of each. */
function boxes(data, from = 0) {
  const found = [];
  let at = from;
  while (at + 8 <= data.byteLength && found.length < BOXES) {
    const { type, begins, size } = header(data, at, data.byteLength - at);
    if (size < begins || at + size > data.byteLength) break;
    found.push({ type, name: data.getUint32(at + 4), content: new DataView(data.buffer, data.byteOffset + at + begins, size - begins) });
    at += size;
  }
  return found;
}

/** The first box along a path of types; null where there is none. */
function along(data, ...path) {
  let here = data;
  for (const type of path) {
    const found = here && boxes(here).find((box) => box.type === type);
    here = found ? found.content : null;
  }
  return here;
}

function ratesIn(movie) {
  const track = boxes(movie).filter((box) => box.type === 'trak').map((box) => box.content).find((each) => {
    const handler = along(each, 'mdia', 'hdlr');
    return handler && text(handler, 8, 4) === 'vide';
  });
  if (!track) return NOTHING;
  const played = playedAt(track);
  const captured = capturedAt(movie);
  const slowed = slowedBy(track);
  const plays = played.rate && played.rate * slowed;
  return {
    plays: plays && usual(plays),
    taken: captured ? usual(captured) : slowed !== 1 && played.rate ? usual(played.rate) : null,
    uneven: played.uneven,
  };
}

/** Frames a second, from how long each is shown: mdhd's units a second, and stts' runs of equal durations. */
function playedAt(track) {
  const header = along(track, 'mdia', 'mdhd');
  const times = along(track, 'mdia', 'minf', 'stbl', 'stts');
  if (!header || !times) return { rate: null, uneven: false };
  const perSecond = header.getUint32(header.getUint8(0) === 1 ? 20 : 12);
  const runs = Array.from({ length: Math.min(times.getUint32(4), (times.byteLength - 8) / 8) }, (_, i) => ({ frames: times.getUint32(8 + 8 * i), lasts: times.getUint32(12 + 8 * i) }))
    .filter((run) => run.frames > 0 && run.lasts > 0).sort((a, b) => a.lasts - b.lasts);
  const all = runs.reduce((sum, run) => sum + run.frames, 0);
  if (!perSecond || all < 2) return { rate: null, uneven: false };
  const lasting = (share) => {
    let count = 0;
    return runs.find((run) => (count += run.frames) >= share * all).lasts;
  };
  // A frame that was left out lasts longer, nothing makes one shorter.
  return { rate: perSecond / lasting(0.25), uneven: lasting(1 - SHARE) / lasting(SHARE) > APART };
}

/** The rate at which the edit list plays the film: 1 where it says nothing else. */
function slowedBy(track) {
  const edits = along(track, 'edts', 'elst');
  if (!edits) return 1;
  const long = edits.getUint8(0) === 1;
  const size = long ? 20 : 12;
  const count = Math.min(edits.getUint32(4), (edits.byteLength - 8) / size);
  for (let i = 0; i < count; i++) {
    const rate = edits.getInt32(8 + i * size + (long ? 16 : 8)) / 65536;
    if (rate > 0 && rate !== 1) return rate;
  }
  return 1;
}

/** The rate that the film was taken at, from the metadata of those who write it; null where it is not there. */
function capturedAt(movie) {
  const meta = along(movie, 'meta');
  if (!meta) return null;
  const inside = boxes(meta, meta.getUint32(0) === 0 ? 4 : 0); // MP4 puts a version before the boxes, which is 0; QuickTime does not
  const keys = inside.find((box) => box.type === 'keys');
  const items = inside.find((box) => box.type === 'ilst');
  if (!keys || !items) return null;
  const names = boxes(keys.content, 8).map((box) => text(box.content, 0, box.content.byteLength));
  const number = names.indexOf(CAPTURED) + 1;
  const item = number > 0 && boxes(items.content).find((box) => box.name === number);
  const value = item && along(item.content, 'data');
  const rate = value ? numberIn(value) : null;
  return rate >= PLAUSIBLE[0] && rate <= PLAUSIBLE[1] ? rate : null;
}

/** The value of an item, by the well-known types of QuickTime's metadata: text, whole numbers and floating ones. */
function numberIn(data) {
  const bytes = data.byteLength - 8;
  switch (data.getUint32(0) & 0xffffff) {
    case 1: return Number(text(data, 8, bytes));
    case 21:
    case 22: return bytes === 4 ? data.getUint32(8) : bytes === 2 ? data.getUint16(8) : bytes === 1 ? data.getUint8(8) : NaN;
    case 23: return data.getFloat32(8);
    case 24: return data.getFloat64(8);
    default: return NaN;
  }
}
