import type { AstroIntegration } from 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:near'?: boolean;
  }
}

/** Makes `client:near` of near-directive.ts known to Astro. */
export const nearDirective = (): AstroIntegration => ({
  name: 'near-directive',
  hooks: {
    'astro:config:setup': ({ addClientDirective }) => {
      addClientDirective({ name: 'near', entrypoint: './src/build/near-directive.ts' });
    },
  },
});
