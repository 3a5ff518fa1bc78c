// Lets the field page open without network, where the browser allows it: on https, or on the machine itself.

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('/worker.js').catch(() => {}); // the page works without, but does not reopen offline
}
