/** Rows in aligned columns: the first and last to the left, those named in `right` to the right. */
export function columns(
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const widths: number[] = [];
  for (const row of rows) {
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, cell.length);
    });
  }
  return rows
    .map((row) =>
      row
        .map((cell, i) =>
          right.includes(i) ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    )
    .map((line) => `  ${line}`)
    .join('\n');
}

/** Words broken into lines of a width, each line but the first under a hanging indent. */
export function wrapped(text: string, indent: string, width = 92): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + word.length + 1 > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].join(`\n${indent}`);
}
