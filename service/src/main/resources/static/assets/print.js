// A button that prints the page; without this module there is none, and the browser's own menu does it.

for (const button of document.querySelectorAll('.print')) {
  button.hidden = false;
  button.addEventListener('click', () => print());
}
