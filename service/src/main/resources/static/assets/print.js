// A button that prints the page; without this module there is none, and the browser's own menu does it.

for (const button of document.querySelectorAll('.print')) {
  button.hidden = false;
  button.addEventListener('click', () => print());
}

// On paper every caution is read, also where the browser does not print what is folded.
addEventListener('beforeprint', () => document.querySelectorAll('.caution-line').forEach((line) => { line.open = true; }));
