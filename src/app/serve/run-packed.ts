// Part of the one file only: runs a library that stands packed in the page, and answers the global variable it sets.
// The policy of the page names the digest of each such script, so nothing else can be run this way.

/**
 * @param block  id of the element that holds the script, gzip in base64
 * @param name   global variable that the script sets
 */
export async function runPacked(block: string, name: string): Promise<unknown> {
  const packed = document.getElementById(block)?.textContent;
  if (packed === undefined || packed === null) throw new Error(`The page holds no block "${block}".`);
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const script = document.createElement('script');
  script.textContent = await new Response(unpacked).text();
  document.head.append(script);
  script.remove();
  const library: unknown = (globalThis as Record<string, unknown>)[name];
  if (library === undefined) throw new Error(`The block "${block}" did not set "${name}".`);
  return library;
}
