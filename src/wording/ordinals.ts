/** "1st", "2nd", "3rd", "4th", "11th", "21st". */
export function ordinal(n: number): string {
  const teen = n % 100 > 10 && n % 100 < 14;
  const ending = teen ? undefined : ['th', 'st', 'nd', 'rd'][n % 10];
  return `${n}${ending ?? 'th'}`;
}
