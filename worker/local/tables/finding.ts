/** Error in a table, with its place; all errors are reported together. */
export interface CsvFinding {
  code:
    | 'CSV_QUOTE_WRONG'
    | 'CSV_COLUMN_UNKNOWN'
    | 'CSV_COLUMN_TWICE'
    | 'CSV_COLUMN_MISSING'
    | 'CSV_UNIT_DIFFERS'
    | 'CSV_CELLS_TOO_MANY'
    | 'CSV_NUMBER_UNCLEAR'
    | 'RECORD_KEY_UNKNOWN'
    | 'RECORD_FIELD_MISSING'
    | 'RECORD_TYPE_WRONG'
    | 'RECORD_VALUE_WRONG';
  severity: 'blocks';
  /** Row number as in spreadsheets: the head line is 1. */
  row: number;
  /** Name of the column as in the file; empty for a whole line. */
  column: string;
  /** Its pointer in the record. */
  pointer: string;
  sentence: string;
  remedy: string;
}
