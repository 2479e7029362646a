// The content security policy of the workbench: nothing may be fetched from, or sent to, any other place than the
// server the page came from. The same text goes into the answers' headers and, as far as a page may state it for
// itself, into the built page, so that the page stays closed when another server hands it out.
// The two hashes are an empty style element and the map styles, both added at run time by the chart library:
// recompute them when it is upgraded (the browser tests fail on a violation).

const directives = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=' 'sha256-2GF9hCGTDj/GGFNlQA54jDdMGl2fvoeZmZjAvBSiAtM='",
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** For the page itself: a browser ignores frame-ancestors there, and says so in its console. */
export const pagePolicy = directives.join('; ');

/** For every answer of the server. */
export const answerHeaders = {
  'Content-Security-Policy': `${pagePolicy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
};
