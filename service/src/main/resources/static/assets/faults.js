// A fault of the service in words, for the forms and for what is kept.

/** What is wrong and what would be allowed, where that says more. */
export function wordsOf(fault) {
  const more = fault.allowed && !fault.detail.includes(fault.allowed) && fault.code !== 'missing';
  return fault.detail + (more ? ' (allowed: ' + fault.allowed + ')' : '');
}
