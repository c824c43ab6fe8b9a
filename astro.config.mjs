import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { compileAhead } from './src/build/compile-ahead.ts';
import { galleryRoute } from './src/build/gallery-route.ts';
import { inLanguage, languagePlugin } from './src/build/language-plugin.ts';
import { readBase } from './src/build/move-site.ts';
import { nearDirective } from './src/build/near.ts';
import { thirdPartyNotices } from './src/build/notices-integration.ts';
import { policyFirst } from './src/build/policy-first.ts';
import { rehypeMarks } from './src/build/rehype-marks.mjs';
import { rehypeMathWords } from './src/build/rehype-math-words.mjs';
import { rehypeTables } from './src/build/rehype-tables.mjs';
import { rehypeTerms } from './src/build/rehype-terms.mjs';
import { translatedRoutes } from './src/build/translated-routes.ts';
import { watchContent } from './src/build/watch-content.mjs';
import { languageOf, languages, source } from './src/language/languages.ts';

// The one inline script that Astro does not hash by itself: see src/storage/boot.js.
const boot = readFileSync(new URL('./src/storage/boot.js', import.meta.url), 'utf8');
const bootHash = /** @type {const} */ (
  `sha256-${createHash('sha256').update(boot).digest('base64')}`
);

// What every simulation needs (the shell, its choices, Preact, quantities: whatever these import) is
// one file. Left to itself the bundler makes a dozen of it, which compress worse: 1 to 2 kB a lesson.
const shared = {
  name: 'simulation',
  // The bundler's own line of runtime goes with it.
  test: /\/src\/(simulation\/([^/]+|choices\/(number|temperatures|words\.[a-z]+))|ui\/still)\.tsx?$|rolldown\/runtime/,
};

// The parts of a chart stay with the line chart, which most pages show: a page that shows a map alone would make two files of them.
const chart = { name: 'chart', test: /\/src\/charts\/LineChart\.tsx$/ };

// The same for the small parts of the engine that most pages ask: 0.1 kB each that one of them stands apart.
const engine = [
  {
    name: 'fluid',
    test: /\/engine\/(fluid\/(fluid|density|viscosity-temp)|numerics\/find-root|clutch\/torque)/,
  },
  { name: 'controller', test: /\/engine\/(controller\/|drive\/engagement-story)/ },
  { name: 'transmissions', test: /\/engine\/transmission\/(sheets|from-sheet|transmissions)/ },
  { name: 'faults', test: /\/engine\/faults\// },
];

// The same for what every drawing is made of.
const drawing = {
  name: 'drawing',
  test: /\/src\/drawings\/(scale|parts\/(label|frame|hatch|gear|spring|words\.[a-z]+))\.tsx?$/,
};

// What every lesson keeps in browser storage: left alone it is four files, since one page reads them with all the rest. Vite's few
// lines that fetch a script later go with it, since every page fetches one: beside a simulation they would bring all of that along.
const kept = {
  name: 'kept',
  test: /\/src\/storage\/(envelope|slots|versioned|settings|progress)\.ts$|vite\/preload-helper/,
};

// What keeps an answer, wherever one is given: every page with a simulation names each file that it may fetch. What is left behind by a
// page that goes stands apart, since pages without answers leave something too.
const behind = { name: 'left-behind', test: /\/src\/storage\/left-behind\.ts$/ };
const answers = { name: 'answers', test: /\/src\/storage\/(answers|answer-steps)\.ts$/ };

// The names of the car, and those among them that a drawing reads: a file of 0.2 kB of its own would cost as much again.
const names = { name: 'names', test: /\/src\/car\/(names\/)?words\.[a-z]+\.ts$/ };

// One build, one language. Words that only the Markdown plugins need are read as the pages read them.
const language = languageOf(process.env.SITE_LANGUAGE);
const translated = language.id !== source;
const tags = inLanguage('./src/lessons/tags/words.en.ts', import.meta.filename, language.id);
if (tags instanceof Error) throw tags;
const { words } = await import(pathToFileURL(tags).href);

// Where the site will stand, if the build was told: what search engines are given has to be a whole address.
const place = readBase(process.env.SITE_BASE);

export default defineConfig({
  ...('address' in place && { site: place.address }),
  base: language.base,
  // A translation has the pages that exist in it and no other, so it has a folder of its own for
  // pages; English is the whole of src/pages.
  srcDir: translated ? './src/translated' : './src',
  // The files of public/ stand at the root, once; a translation has no folder of this name.
  publicDir: translated ? './src/translated/public' : './public',
  outDir: `./dist${language.base}`,
  // The tests of the lesson form build a site of their own beside this one.
  cacheDir: process.env.CONTENT_DIR
    ? `${process.env.CONTENT_DIR}-cache`
    : `./node_modules/.astro/${language.id}`,
  output: 'static',
  trailingSlash: 'always',
  // 3 to 10 kB in the page instead of a request before the first paint: 300 ms sooner on a slow phone.
  build: { inlineStylesheets: 'always' },
  devToolbar: { enabled: false },
  integrations: [
    preact(),
    nearDirective(),
    mdx(),
    watchContent(process.env.CONTENT_DIR ?? 'content'),
    thirdPartyNotices(),
    policyFirst(),
    ...(translated
      ? [translatedRoutes(language.id)]
      : [galleryRoute(process.env.GALLERY === 'yes')]),
  ],
  markdown: {
    // Shiki writes style attributes, which the content security policy refuses.
    syntaxHighlight: false,
    // Astro 7's own Markdown engine takes no remark plugins, and formulas need them.
    processor: unified({
      remarkPlugins: [remarkMath],
      // MathML alone: browsers draw it themselves, so no style sheet, no fonts, no inline styles.
      rehypePlugins: [
        rehypeMathWords,
        [rehypeKatex, { output: 'mathml', strict: 'error', throwOnError: true }],
        [rehypeTables, { label: words.table }],
        [
          rehypeMarks,
          {
            ...words.noSource,
            href: `${languages[source].base}sources/#no-source`,
            hreflang: translated ? source : undefined,
          },
        ],
        rehypeTerms,
      ],
      smartypants: false,
    }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "base-uri 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        // The search form in the header; no other form of the site is ever sent.
        "form-action 'self'",
        "img-src 'self' data:",
        "manifest-src 'self'",
        "worker-src 'self'",
        // Text becomes script nowhere; which policy may make an exception is said in Page.astro.
        "require-trusted-types-for 'script'",
      ],
      scriptDirective: { resources: ["'self'"], hashes: [bootHash] },
      styleDirective: { resources: ["'self'"] },
    },
  },
  vite: {
    plugins: [languagePlugin(language.id), compileAhead()],
    // A font or picture inlined as a data: address is paid for on every page.
    build: { assetsInlineLimit: 0 },
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              codeSplitting: {
                groups: [kept, behind, answers, shared, chart, drawing, names, ...engine],
              },
            },
          },
        },
      },
    },
  },
});
