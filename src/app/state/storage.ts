// What the browser keeps between visits: the design's text, the view, the light, what papers remember. Storage may be
// denied, full or hold rubbish; none of that may lose the open design or stop the page, so every use answers instead of
// throwing, what was refused is remembered whoever wrote it, and is tried again with the next thing to be kept.

/** Denied: by a setting, or in a private window. Full: there is no room left. */
export type WhyRefused = 'denied' | 'full';

/** What is not kept as it is now, by key. */
export type Refused = ReadonlyMap<string, WhyRefused>;

export interface Keeper {
  read(key: string): string | undefined;
  /** False when the browser did not keep it. */
  write(key: string, text: string): boolean;
  /** The same object until it changes. */
  refused(): Refused;
  /** Tells when what is refused has changed; answers how to be told no more. */
  subscribe(listener: () => void): () => void;
}

const prefix = 'kettlefin.';

/** The key that another page of this browser has changed, and its new text; undefined for any other program's key. */
export function changedKey({ key, newValue }: StorageEvent): readonly [string, string | undefined] | undefined {
  return key?.startsWith(prefix) ? [key.slice(prefix.length), newValue ?? undefined] : undefined;
}

/** Over the browser's own storage, which is reached only on use: even naming it may throw where it is denied. */
export function browserKeeper(storage: () => Storage): Keeper {
  let refused: Refused = new Map();
  const listeners = new Set<() => void>();
  const waiting = new Map<string, { readonly text: string; readonly before: string | undefined }>();

  const read = (key: string) => {
    try {
      return storage().getItem(prefix + key) ?? undefined;
    } catch {
      return undefined;
    }
  };

  const attempt = (key: string, text: string): WhyRefused | undefined => {
    try {
      storage().setItem(prefix + key, text);
      return undefined;
    } catch (error) {
      return error instanceof DOMException && /quota/i.test(error.name) ? 'full' : 'denied';
    }
  };

  /** Tries again what was refused before, unless another page has written it in the meantime. */
  const tryWaiting = (now: Map<string, WhyRefused>) => {
    for (const [key, { text, before }] of waiting) {
      if (read(key) !== before || attempt(key, text) !== undefined) continue;
      waiting.delete(key);
      now.delete(key);
    }
  };

  return {
    read,
    write(key, text) {
      const now = new Map(refused);
      waiting.delete(key);
      const why = attempt(key, text);
      if (why === undefined) {
        now.delete(key);
        tryWaiting(now);
      } else {
        now.set(key, why);
        waiting.set(key, { text, before: read(key) });
      }
      const isSame = now.size === refused.size && [...now].every(([each, reason]) => refused.get(each) === reason);
      if (!isSame) {
        refused = now;
        for (const listener of listeners) listener();
      }
      return why === undefined;
    },
    refused: () => refused,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
