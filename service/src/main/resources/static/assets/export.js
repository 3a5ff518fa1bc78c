// Entries as a file, so that nothing typed is ever locked in a phone. Needs no network.

/** Hands the entries to the browser as a file. */
export function exportEntries(entries) {
  const list = entries.map((e) => ({ joint: e.title, jointId: e.jointId, idempotencyKey: e.key, report: JSON.parse(e.body), test: e.testId || null, takenBackBecause: e.undo ? e.undo.reason : null, state: e.state, refusal: e.refusal || null }));
  const url = URL.createObjectURL(new Blob([JSON.stringify({ tests: list }, null, 2)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = 'tests-not-sent.json';
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 10000);
}
