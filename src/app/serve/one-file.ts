// The workbench as one HTML file that opens by double-click: script, styles, worker and icon stand inside it, and the
// chart library as a packed block that is unpacked when the first chart is shown. Whatever is loaded lazily elsewhere is
// part of the one script here, so modules need to know nothing of it. docs/decisions/one-file.md says why it is so.

import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { gzipSync } from 'node:zlib';
import { build, type Plugin, type Rolldown } from 'vite';
import { oneFilePolicy } from './policy.mjs';

/** The bundler's mode that builds it. */
export const oneFileMode = 'one-file';

/** The file's name in the folder that is built into. */
export const oneFileName = 'kettlefin.html';

interface PackedLibrary {
  /** What modules import. */
  readonly name: string;
  /** Id of the block in the page. */
  readonly block: string;
  /** The global variable that the library's classic script sets. */
  readonly global: string;
}

/** Libraries too large to be parsed at every start. Each is one classic script that sets a global variable. */
const packedLibraries: readonly PackedLibrary[] = [
  { name: 'plotly.js-dist-min', block: 'packed-chart-library', global: 'Plotly' },
];

/** What the bundler must be told besides the plugin. */
export const oneFileBuild = {
  outDir: 'dist',
  emptyOutDir: false,
  copyPublicDir: false,
  cssCodeSplit: false,
  assetsInlineLimit: Number.MAX_SAFE_INTEGER,
  modulePreload: false,
  rolldownOptions: { output: { codeSplitting: false } },
} as const;

export function oneFile(): Plugin[] {
  const packed = new Map<PackedLibrary, string>();
  return [inlineWorker(), packLibraries(packed), putTogether(packed)];
}

/**
 * The engine's worker as a text in the page, started from a blob: a page on disk may not start a worker by address, and
 * Chromium starts none of the module kind there, so it is a classic script.
 */
function inlineWorker(): Plugin {
  const name = 'virtual:engine-worker';
  const resolved = `\0${name}`;
  return {
    name: 'inline-worker',
    resolveId: (id) => (id === name ? resolved : undefined),
    async load(id) {
      if (id !== resolved) return undefined;
      const text = await workerText(this.environment.config.root);
      return `const address = URL.createObjectURL(new Blob([${JSON.stringify(text)}], { type: 'text/javascript' }));
export default () => new Worker(address);`;
    },
  };
}

/** @param root  the project's folder */
async function workerText(root: string): Promise<string> {
  const built = (await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      target: 'es2023',
      assetsInlineLimit: Number.MAX_SAFE_INTEGER,
      modulePreload: false,
      copyPublicDir: false,
      rolldownOptions: {
        input: `${root}/src/app/worker/engine.worker.ts`,
        output: { format: 'iife', codeSplitting: false },
      },
    },
  })) as Rolldown.RolldownOutput;
  const [entry, ...others] = built.output;
  if (others.length > 0) throw new Error(`The worker came out in ${others.length + 1} files instead of one.`);
  return entry.code;
}

function packLibraries(packed: Map<PackedLibrary, string>): Plugin {
  const prefix = '\0packed:';
  const require = createRequire(import.meta.url);
  return {
    name: 'pack-libraries',
    enforce: 'pre',
    resolveId: (id) => (packedLibraries.some(({ name }) => name === id) ? prefix + id : undefined),
    async load(id) {
      const library = packedLibraries.find(({ name }) => prefix + name === id);
      if (library === undefined) return undefined;
      packed.set(library, await readFile(require.resolve(library.name), 'utf8'));
      const { block, global } = library;
      return `import { runPacked } from '/src/app/serve/run-packed.ts';
export default await runPacked(${JSON.stringify(block)}, ${JSON.stringify(global)});`;
    },
  };
}

/** Puts what the bundler made into the page and takes it out of the bundle; anything left over is an error. */
function putTogether(packed: ReadonlyMap<PackedLibrary, string>): Plugin {
  return {
    name: 'put-together',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const parts = Object.values(bundle);
        const page = parts.find((part) => part.fileName === 'index.html');
        if (page?.type !== 'asset') throw new Error('The bundler made no page.');
        const chunks = parts.filter((part) => part.type === 'chunk');
        const styles = parts.filter((part) => part.type === 'asset' && part.fileName.endsWith('.css'));
        const [script, ...moreScripts] = chunks;
        if (script === undefined || moreScripts.length > 0) throw new Error(`${chunks.length} scripts instead of one.`);
        const others = parts.filter((part) => part !== page && part !== script && !styles.includes(part));
        const html = assemble({
          page: textOf(page),
          script: script.code,
          style: styles.map((part) => textOf(part as Rolldown.OutputAsset)).join('\n'),
          assets: others.map((part) => part as Rolldown.OutputAsset),
          packed,
        });
        for (const part of parts) delete bundle[part.fileName];
        this.emitFile({ type: 'asset', fileName: oneFileName, source: html });
      },
    },
  };
}

interface Parts {
  readonly page: string;
  readonly script: string;
  readonly style: string;
  readonly assets: readonly Rolldown.OutputAsset[];
  readonly packed: ReadonlyMap<PackedLibrary, string>;
}

function assemble({ page, script, style, assets, packed }: Parts): string {
  const safeScript = escapedForPage(script);
  if (/<\/style/i.test(style)) throw new Error('A style holds "</style", which would end it in the page.');
  const policy = oneFilePolicy({
    scripts: [safeScript, ...packed.values()].map(hashOf),
    styles: [hashOf(style)],
  });
  // Functions as replacements: a text may hold "$&" and the like.
  let html = page
    .replace(/<script type="module"[^>]*src="[^"]*"[^>]*><\/script>\s*/, '')
    .replace(/<link rel="stylesheet"[^>]*>\s*/, '')
    .replace('<meta charset="utf-8">', (charset) => `${charset}\n    ${metaPolicy(policy)}`)
    .replace('</head>', () => `<style>${style}</style>\n  </head>`)
    .replace('</body>', () => `${blocks(packed)}<script type="module">${safeScript}</script>\n  </body>`);
  for (const asset of assets) {
    const address = `./${asset.fileName}`;
    if (!html.includes(`"${address}"`)) throw new Error(`${asset.fileName} has no place in the one file.`);
    html = html.replaceAll(`"${address}"`, () => `"${dataAddress(asset)}"`);
  }
  return html;
}

function metaPolicy(policy: string): string {
  return `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
}

function blocks(packed: ReadonlyMap<PackedLibrary, string>): string {
  return [...packed]
    .map(([{ block }, text]) => {
      const base64 = gzipSync(text, { level: 9 }).toString('base64');
      return `<script type="application/gzip;base64" id="${block}">${base64}</script>\n    `;
    })
    .join('');
}

/**
 * A script's text as it may stand in a page. An escaped letter means the same in a string, a template, a regular
 * expression and a name, so the words that would end the script, or nest another in it, are broken up everywhere.
 */
export function escapedForPage(script: string): string {
  return script.replaceAll(/\r\n?/g, '\n').replaceAll(/<(\/?)(s)(?=cript)/gi, (_all, slash: string, letter: string) => {
    const code = letter.charCodeAt(0).toString(16).padStart(4, '0');
    return `<${slash}\\u${code}`;
  });
}

/** A source of the policy: the text's SHA-256 digest. */
function hashOf(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

function textOf(asset: Rolldown.OutputAsset): string {
  return typeof asset.source === 'string' ? asset.source : Buffer.from(asset.source).toString('utf8');
}

const mediaTypes: Readonly<Record<string, string>> = { svg: 'image/svg+xml', png: 'image/png', woff2: 'font/woff2' };

function dataAddress(asset: Rolldown.OutputAsset): string {
  const ending = asset.fileName.slice(asset.fileName.lastIndexOf('.') + 1);
  const type = mediaTypes[ending];
  if (type === undefined) throw new Error(`${asset.fileName}: no media type is known for ".${ending}".`);
  return `data:${type};base64,${Buffer.from(asset.source).toString('base64')}`;
}
