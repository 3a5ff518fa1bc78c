// Signing this browser out.

import { leaving } from './leaving.js';

const form = document.querySelector('form[action="/sign-out"]');
if (form) leaving(form);
