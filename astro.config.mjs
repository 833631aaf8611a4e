import { createHash } from 'node:crypto';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { progressStyle } from './src/register/exports.ts';
import { contentPlugin } from './src/tools/content-plugin.ts';
import { lessonZones } from './src/tools/lesson-zones.ts';
import { withoutExamples } from './src/tools/without-examples.ts';

export default defineConfig({
  integrations: [mdx(), preact()],
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false, processor: satteri({ mdastPlugins: [lessonZones] }) },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
      // Places in drawings are worked out from data and written into style attributes.
      styleDirective: {
        resources: [{ resource: "'unsafe-inline'", kind: 'attribute' }],
        // The progress page that the register opens.
        hashes: [`sha256-${createHash('sha256').update(progressStyle).digest('base64')}`],
      },
    },
  },
  vite: { plugins: [contentPlugin(), withoutExamples()] },
});
