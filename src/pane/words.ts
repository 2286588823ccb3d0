export function count(number: number, one: string, many = `${one}s`): string {
  return `${String(number)} ${number === 1 ? one : many}`;
}
