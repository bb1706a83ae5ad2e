/** `blocks` stops the release; `caution` must be acknowledged by a named person; `note` is only printed. */
export type Severity = 'blocks' | 'caution' | 'note';

/** A finding on a visit: messages from the release check, or their text. Codes never change. */
export type Finding<Text = string> = {
  code: string;
  severity: Severity;
  /** JSON pointer (RFC 6901) into the record as posted. */
  pointer: string;
  /** What is wrong, with the numbers, in the units of the record. */
  sentence: Text;
  /** One sentence on what to do. */
  remedy: Text;
  /** Where the rule comes from. */
  source: string;
  /** The numbers, in the units of calculation, named with their unit. */
  data: Readonly<Record<string, string | number | boolean>>;
  /** Finding of which this is another place or a consequence: it is dealt with first. */
  follows?: { code: string; pointer: string };
  /** Set on a caution that a named person has accepted with a reason. */
  acknowledgedBy?: string;
};
