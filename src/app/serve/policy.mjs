// The content security policy of the workbench, in its two forms: nothing may be fetched from, or sent to, any other
// place than the server the page came from; and from the one file, nothing may be fetched or sent at all.
// Served, the same text goes into the answers' headers and, as far as a page may state it for itself, into the built
// page, so that the page stays closed when another server hands it out. The one file states its own.
// The two hashes are an empty style element and the map styles, both added at run time by the chart library:
// recompute them when it is upgraded (the browser tests fail on a violation).

const chartStyles =
  "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=' 'sha256-2GF9hCGTDj/GGFNlQA54jDdMGl2fvoeZmZjAvBSiAtM='";

const directives = [
  "default-src 'none'",
  "script-src 'self'",
  `style-src 'self' ${chartStyles}`,
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

/**
 * For the one file. A page on disk has no place of its own that 'self' could mean, so each text that may run or style is
 * named by its digest: the page's script, the packed chart library, the styles. The engine's worker comes out of the
 * page's script as a blob and inherits this policy; pictures and fonts stand in the page as data. Style attributes stay
 * open, as in the served page, because the chart library writes them.
 * @param {{ scripts: readonly string[], styles: readonly string[] }} hashes  'sha256-…' of each text, quoted
 */
export function oneFilePolicy({ scripts, styles }) {
  return [
    "default-src 'none'",
    `script-src ${scripts.join(' ')}`,
    `style-src ${styles.join(' ')} ${chartStyles}`,
    "style-src-attr 'unsafe-inline'",
    'img-src data: blob:',
    'font-src data:',
    "connect-src 'none'",
    'worker-src blob:',
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}
