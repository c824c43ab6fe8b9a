/** What an .astro file is to a compiler that cannot read one. `astro check` reads the file itself. */
declare module '*.astro' {
  import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
  const component: AstroComponentFactory;
  export default component;
}
