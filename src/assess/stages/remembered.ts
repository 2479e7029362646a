// What was computed before, by its key.

/** The value of a key, computed when it is first asked for. */
export function remembered<Key, Value>(store: Map<Key, Value>, key: Key, compute: () => Value): Value {
  const known = store.get(key);
  if (known !== undefined) return known;
  const value = compute();
  store.set(key, value);
  return value;
}
