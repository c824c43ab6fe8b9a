import eslint from '@eslint/js';
import astro from 'eslint-plugin-astro';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const forbid = (object, property, message) => ({ object, property, message });

/** Scripts that stand in the page itself, as they are. */
const inlined = ['src/storage/boot.js', 'src/rounds/waits/early.js', 'src/measure/jobs/early.js'];

export default defineConfig(
  {
    ignores: [
      'dist',
      'dist.*',
      'node_modules.*',
      '.astro',
      '.cache',
      'coverage',
      'test-results',
      'playwright-report',
    ],
  },
  eslint.configs.recommended,
  {
    files: ['**/*.{ts,tsx}'],
    // What needs types is asked by oxlint, in seconds: .oxlintrc.json.
    extends: [tseslint.configs.strict],
    rules: {
      eqeqeq: 'error',
    },
  },
  ...astro.configs.recommended,
  {
    files: ['**/*.mjs', ...inlined],
    languageOptions: {
      globals: { process: 'readonly', console: 'readonly', URL: 'readonly', Buffer: 'readonly' },
    },
  },
  {
    files: inlined,
    languageOptions: {
      sourceType: 'script',
      globals: { document: 'readonly', localStorage: 'readonly', location: 'readonly' },
    },
    rules: { 'no-empty': ['error', { allowEmptyCatch: true }] },
  },
  {
    // These run in the page of another browser; "until" is the file that stands before each.
    files: ['tests/other-browsers/*.js'],
    languageOptions: {
      sourceType: 'script',
      globals: Object.fromEntries(
        [
          'window',
          'document',
          'innerWidth',
          'addEventListener',
          'setTimeout',
          'Event',
          'until',
        ].map((name) => [name, 'readonly']),
      ),
    },
  },
  {
    // The engine is arithmetic: no clock, chance, screen, network, storage or console.
    files: ['src/engine/**/*.ts', 'src/shop/**/*.ts', 'src/diagnosis/**/*.ts', 'src/quiz/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...['Date', 'performance', 'console', 'fetch', 'document', 'window', 'navigator'].map(
          (name) => ({
            name,
            message: `Pure code does not know ${name}: pass what it needs as an argument.`,
          }),
        ),
        ...[
          'localStorage',
          'sessionStorage',
          'indexedDB',
          'setTimeout',
          'setInterval',
          'process',
        ].map((name) => ({ name, message: `Pure code does not know ${name}.` })),
      ],
      'no-restricted-properties': [
        'error',
        forbid('Math', 'random', 'Chance is an argument: pass a seed or a generator.'),
      ],
    },
  },
  {
    // A widget asks the engine; it never does physics of its own.
    files: ['src/{simulation,widgets,planner}/**/*.{ts,tsx}'],
    rules: {
      'no-restricted-syntax': [
        'error',
        {
          selector: "BinaryExpression[operator='**'], AssignmentExpression[operator='**=']",
          message:
            'A power in a widget is physics in the wrong place: put the formula in src/engine.',
        },
      ],
      'no-restricted-properties': [
        'error',
        ...['pow', 'sqrt', 'exp', 'log', 'log10', 'log2', 'cbrt'].map((name) =>
          forbid('Math', name, 'Physics belongs in src/engine, scales in src/charts.'),
        ),
      ],
    },
  },
  {
    // Only src/storage touches what the browser keeps.
    files: [
      'src/{charts,drawings,ui,simulation,widgets,planner,measure,lessons,layouts,pages}/**/*.{ts,tsx,astro}',
    ],
    rules: {
      'no-restricted-globals': [
        'error',
        ...['localStorage', 'sessionStorage', 'indexedDB'].map((name) => ({
          name,
          message: 'Only src/storage touches browser storage.',
        })),
      ],
    },
  },
);
