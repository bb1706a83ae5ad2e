/** Amendment of a value (RFC 7396): any part of it; null removes; lists are replaced whole. */
export type MergePatch<Value> = Value extends readonly unknown[]
  ? Value
  : Value extends object
    ? { [Field in keyof Value]?: MergePatch<Value[Field]> | null }
    : Value;
