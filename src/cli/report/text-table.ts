// Plain text for a terminal: wrapped paragraphs and columns that line up.

const width = 96;

/** Wraps a paragraph, every line after the first indented. No-break spaces stay unbroken. */
export function paragraph(text: string, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n]+/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length > width - indent.length && line !== '') {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  lines.push(line);
  return lines.map((each) => `${indent}${each}`).join('\n');
}

/** Rows of cells, left-aligned, two spaces between columns, indented by two. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows) {
    row.forEach((cell, index) => {
      widths[index] = Math.max(widths[index] ?? 0, cell.length);
    });
  }
  return rows
    .map((row) => `  ${row.map((cell, index) => cell.padEnd(widths[index]!)).join('  ')}`.trimEnd())
    .join('\n');
}

/** Rows of a short cell and a text that is wrapped beside it. */
export function columnAndText(rows: readonly (readonly [string, string])[]): string {
  const short = Math.max(...rows.map(([cell]) => cell.length));
  const indent = ' '.repeat(short + 4);
  return rows
    .map(([cell, text]) => `  ${cell.padEnd(short)}  ${paragraph(text, indent).slice(indent.length)}`)
    .join('\n');
}

export function section(title: string, body: string): string {
  return `${title}\n${body}\n`;
}
