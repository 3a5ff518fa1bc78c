// Rules for the modules of the pages: what a browser runs as it stands, and text that never becomes markup.

import js from '@eslint/js';
import globals from 'globals';

const PAGES = 'src/main/resources/static/assets/*.js';
const MARKUP = ['innerHTML', 'outerHTML', 'insertAdjacentHTML', 'srcdoc'].map((property) => ({ property, message: 'Text only ever becomes text.' }));

// The worker is a text that the service completes.
const COMPLETED = {
  preprocess: (text) => [text.replace('{{files}}', '[]')],
  postprocess: (messages) => messages.flat(),
};

export default [
  js.configs.recommended,
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    rules: {
      'array-callback-return': 'error',
      'consistent-return': 'off',
      eqeqeq: 'error',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-restricted-properties': ['error', ...MARKUP, { object: 'document', property: 'write' }, { object: 'Math', property: 'random', message: 'Keys come from crypto.getRandomValues.' }],
      'no-shadow': 'off',
      'no-use-before-define': ['error', { functions: false, variables: false }],
      'no-var': 'error',
      'prefer-const': 'error',
    },
  },
  { files: [PAGES], languageOptions: { ecmaVersion: 2022, sourceType: 'module', globals: globals.browser } },
  {
    files: [PAGES],
    rules: { 'no-restricted-syntax': ['error', { selector: 'CallExpression[callee.property.name="randomUUID"]', message: 'There is none where a phone opens the page by plain http.' }] },
  },
  { files: ['src/main/resources/worker.js'], processor: COMPLETED, languageOptions: { ecmaVersion: 2022, sourceType: 'script', globals: globals.serviceworker } },
  { files: ['src/test/js/*.js', 'eslint.config.js'], languageOptions: { globals: globals.node } },
];
