// What the browser keeps between visits: the design's text, the view, the light. Storage may be denied, full or hold
// rubbish; none of that may lose the open design or stop the page, so every use answers instead of throwing.

export interface Keeper {
  read(key: string): string | undefined;
  /** False when the browser did not keep it. */
  write(key: string, text: string): boolean;
}

const prefix = 'kettlefin.';

/** Over the browser's own storage, which is reached only on use: even naming it may throw where it is denied. */
export function browserKeeper(storage: () => Storage): Keeper {
  return {
    read(key) {
      try {
        return storage().getItem(prefix + key) ?? undefined;
      } catch {
        return undefined;
      }
    },
    write(key, text) {
      try {
        storage().setItem(prefix + key, text);
        return true;
      } catch {
        return false;
      }
    },
  };
}
