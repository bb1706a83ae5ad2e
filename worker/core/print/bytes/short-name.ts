const LONGEST = 40;

/** A name out of a file, fit to be said and kept: what is not plain is left out of sight, and it is cut where it is long. */
export function shortName(name: string): string {
  const plain = name.replace(/[^ -~]/g, '?').trim();
  return (plain.length > LONGEST ? `${plain.slice(0, LONGEST)}...` : plain) || 'without a name';
}
