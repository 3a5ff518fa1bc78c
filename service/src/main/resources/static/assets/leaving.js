// Before someone is signed in or out, what this browser keeps of the last one's joints is forgotten. What waits to be sent stays.

import { forget } from './store.js';

const PATIENCE = 2000; // ms; a store that another tab holds keeps nobody from signing out

/** Has a form forget first, and then be sent; a browser that keeps nothing only sends it. */
export function leaving(form) {
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const late = new Promise((resolve) => { setTimeout(resolve, PATIENCE); });
    Promise.race([forget().catch(() => {}), late]).then(() => form.submit());
  });
}
