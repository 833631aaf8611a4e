/** "Bench 7" as a piece of a file name: "bench-7". `none` stands for a name with nothing in it that a file name can have. */
export function filePiece(name: string, none: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return plain || none;
}
