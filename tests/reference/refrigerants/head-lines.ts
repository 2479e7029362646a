// The head lines of an exported table: "# key: words", before its columns.

/** What a head line says. @throws Error naming the file where there is none of that key */
export function headWords(path: string, lines: readonly string[]): (key: string) => string {
  const head = new Map(
    lines.filter((line) => line.startsWith('# ')).map((line) => line.slice(2).split(/: (.*)/, 2) as [string, string]),
  );
  return (key) => {
    const found = head.get(key);
    if (found === undefined) throw new Error(`${path}: no head line "${key}"`);
    return found;
  };
}
