/** The content of the course, given out by `src/tools/content-plugin.ts`. */
declare module 'virtual:benchbook/content' {
  export const content: import('./content-types.ts').Content;
}
