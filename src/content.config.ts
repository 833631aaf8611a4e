/** Lessons as Astro renders them. What they say of themselves is checked by `npm run check`, and said again here for types. */
import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'zod';

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*/*.mdx' }),
  schema: z.object({ title: z.string(), sheet: z.string(), lead: z.string(), minutes: z.number() }),
});

export const collections = { lessons };
