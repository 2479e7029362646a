// A link that carries a design: its text, compressed, after the address's '#', which no browser sends to any server.
//   #for-study-only,not-permission-to-build&design=a…
// The first letter is the version of the coding. 'a' is the text in UTF-8, in the zlib format (RFC 1950), in base64url
// without padding (RFC 4648). That format ends with a checksum, so a link that was cut off or changed on its way is
// noticed instead of opening another design. The words in front are the caution that travels with the link.

import { longestDesignText } from '../../design/index.ts';

const words = 'for-study-only,not-permission-to-build';
const version = 'a';

/** A longer link is not read [characters]; browsers hold about as much. */
export const longestLink = 2_000_000;

/** Bytes inflated at a time: what inflates to a thousand times its size is noticed early. */
const slice = 1024;

/** Why a link carries no design that could be read. */
export type LinkFault = 'empty' | 'newerLink' | 'changed' | 'tooLong';

export type LinkedText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly fault: LinkFault };

/**
 * @param page  the address of the page; what follows its '#' is replaced
 * @param text  the design's text
 */
export async function linkWith(page: string, text: string): Promise<string> {
  const [address = ''] = page.split('#');
  return `${address}#${words}&design=${version}${base64url(await deflated(new TextEncoder().encode(text)))}`;
}

/**
 * The text that a link carries. What mail and chat programs do to links is undone: escapes, line breaks, a full stop or a
 * bracket after the end.
 * @param link  the whole address, or what follows from its '#'
 */
export async function textOfLink(link: string): Promise<LinkedText> {
  if (link.length > longestLink) return { ok: false, fault: 'tooLong' };
  const carried = carriedBy(link);
  if (carried === '') return { ok: false, fault: 'empty' };
  if (!carried.startsWith(version)) return { ok: false, fault: 'newerLink' };
  try {
    const bytes = await inflated(bytesOf(carried.slice(version.length)));
    if (bytes === undefined) return { ok: false, fault: 'tooLong' };
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return { ok: false, fault: 'changed' };
  }
}

function carriedBy(link: string): string {
  const hash = unescaped(link.slice(link.indexOf('#') + 1)).replaceAll(/\s/g, '');
  const part = hash.split('&').find((each) => each.startsWith('design='));
  return (part ?? '').slice('design='.length).replace(/[^\w-]+$/, '');
}

/** A link that was cut within an escape is taken as it stands. */
function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/**
 * @returns undefined where the text would be longer than any design
 * @throws whatever the stream does with bytes that are not whole
 */
async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array | undefined> {
  const stream = new DecompressionStream('deflate');
  const fed = feed(stream.writable.getWriter(), bytes);
  // A fault reaches the reader too, and a reader that has read enough leaves the rest unwritten.
  fed.catch(() => undefined);
  const reader = stream.readable.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    parts.push(next.value);
    length += next.value.length;
    if (length > longestDesignText) {
      await reader.cancel();
      return undefined;
    }
  }
  await fed;
  const whole = new Uint8Array(length);
  let end = 0;
  for (const part of parts) {
    whole.set(part, end);
    end += part.length;
  }
  return whole;
}

async function feed(writer: WritableStreamDefaultWriter<BufferSource>, bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  for (let start = 0; start < bytes.length; start += slice) await writer.write(bytes.subarray(start, start + slice));
  await writer.close();
}

function base64url(bytes: Uint8Array): string {
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** @throws if the text is not base64url */
function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  if (!/^[\w-]*$/.test(text)) throw new Error('not base64url');
  return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
}
