// Storage that is denied, full or holds rubbish must never throw.

import { describe, expect, test } from 'vitest';
import { browserKeeper } from '../../src/app/state/storage.ts';

function memory(): Storage {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  } as unknown as Storage;
}

describe('keeping in the browser', () => {
  test('what was kept is read again', () => {
    const storage = memory();
    const keeper = browserKeeper(() => storage);
    expect(keeper.write('design', '{}')).toBe(true);
    expect(keeper.read('design')).toBe('{}');
    expect(keeper.read('never kept')).toBeUndefined();
  });

  test('denied storage answers instead of throwing', () => {
    const keeper = browserKeeper(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    expect(keeper.read('design')).toBeUndefined();
    expect(keeper.write('design', '{}')).toBe(false);
  });

  test('full storage says that nothing was kept', () => {
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
    } as unknown as Storage;
    expect(browserKeeper(() => full).write('design', '{}')).toBe(false);
  });
});
