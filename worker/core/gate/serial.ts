/** Whether two serial numbers are the same once spaces and letter case are left out. */
export function sameSerial(a: string, b: string): boolean {
  const plain = (serial: string): string => serial.replace(/\s+/g, '').toUpperCase();
  return plain(a) === plain(b);
}
