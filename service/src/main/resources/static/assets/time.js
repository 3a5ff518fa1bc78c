// Times with the offset of the place where the phone is.

const two = (n) => String(n).padStart(2, '0');

function offset(date) {
  const minutes = -date.getTimezoneOffset();
  const size = Math.abs(minutes);
  return (minutes < 0 ? '-' : '+') + two(Math.floor(size / 60)) + ':' + two(size % 60);
}

/** As an input of day and time takes it, to the minute. */
export function localText(date) {
  return date.getFullYear() + '-' + two(date.getMonth() + 1) + '-' + two(date.getDate()) + 'T' + two(date.getHours()) + ':' + two(date.getMinutes());
}

/** The text of such an input with the offset that holds here at that time, or null. */
export function withOffset(text) {
  const date = new Date(text);
  return text === '' || Number.isNaN(date.getTime()) ? null : localText(date) + ':00' + offset(date);
}

/** Now, to the second. */
export function firedNow() {
  const now = new Date();
  return localText(now) + ':' + two(now.getSeconds()) + offset(now);
}
