// The library that draws the page. Components are written against the interface of React, whose types they are checked
// with; what is loaded is Preact, which offers the same interface at a seventh of the size. docs/decisions/page-library.md.

/** What modules import, and what stands in for it: for the bundler and for tests that import components. */
export const pageLibrary = [
  { find: /^react\/jsx-runtime$/, replacement: 'preact/jsx-runtime' },
  { find: /^react\/jsx-dev-runtime$/, replacement: 'preact/jsx-dev-runtime' },
  { find: /^react-dom\/client$/, replacement: 'preact/compat/client' },
  { find: /^react(-dom)?$/, replacement: 'preact/compat' },
];
