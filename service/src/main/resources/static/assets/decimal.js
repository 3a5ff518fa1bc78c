// Decimal numbers as people type them, kept digit by digit: a charge is sent as it was written.

const FORM = /^(\d{1,6})(?:\.(\d{0,6}))?$/;

/** The number typed, with a point, or null where it is none. Takes "1,5" and "1.5". */
export function parse(text) {
  const typed = String(text).trim().replace(',', '.').replace(/^\.(?=\d)/, '0.');
  const found = FORM.exec(typed);
  if (!found) return null;
  const whole = found[1].replace(/^0+(?=\d)/, '');
  return found[2] ? whole + '.' + found[2] : whole;
}

function scaled(text, digits) {
  const [whole, part = ''] = String(text).split('.');
  return BigInt(whole + part.padEnd(digits, '0'));
}

/** Digits after the point. */
export function digits(text) {
  const point = String(text).indexOf('.');
  return point < 0 ? 0 : String(text).length - point - 1;
}

/** Negative, zero or positive, as a is less than, equal to or more than b. */
export function compare(a, b) {
  const most = Math.max(digits(a), digits(b));
  const x = scaled(a, most);
  const y = scaled(b, most);
  return x < y ? -1 : x > y ? 1 : 0;
}

function written(value, places) {
  const text = value.toString().padStart(places + 1, '0');
  return places === 0 ? text : text.slice(0, -places) + '.' + text.slice(-places);
}

/** The next mark of the measure above (1) or below (-1) a value; never below one step. */
export function step(text, measure, direction) {
  const places = Math.max(digits(text), digits(measure));
  const size = scaled(measure, places);
  const value = scaled(text, places);
  const below = value / size;
  const onMark = below * size === value;
  let marks = direction > 0 ? below + 1n : onMark ? below - 1n : below;
  if (marks < 1n) marks = 1n;
  return written(marks * scaled(measure, digits(measure)), digits(measure));
}

/** A number of the service with as many digits as the measure has, at least. */
export function shown(value, measure) {
  const text = parse(String(value));
  const places = digits(measure);
  if (text === null || digits(text) >= places) return String(value);
  return written(scaled(text, places), places);
}

/** A charge of the service between the marks, with the digits of the measure. */
export function near(value, measure) {
  const text = parse(String(value));
  const places = digits(measure);
  if (text === null || digits(text) <= places) return shown(value, measure);
  const size = 10n ** BigInt(digits(text) - places);
  const whole = scaled(text, digits(text));
  const down = whole / size;
  const beyond = 2n * (whole - down * size) - size;
  return written(beyond > 0n || (beyond === 0n && down % 2n === 1n) ? down + 1n : down, places);
}

/** A computed volume, force, area or pressure: three digits, for nobody knows more. */
export function brief(value) {
  const written = String(value);
  if (written.replace(/[-.]/g, '').replace(/^0+/, '').length <= 3) return written;
  const rounded = Number(value).toPrecision(3);
  return rounded.includes('e') ? String(Number(rounded)) : rounded;
}

/** A limit of the service with the digits of the measure, never rounded up. */
export function never(value, measure) {
  const text = parse(String(value));
  const places = digits(measure);
  if (text === null || digits(text) <= places) return shown(value, measure);
  return written(scaled(text, digits(text)) / 10n ** BigInt(digits(text) - places), places);
}
