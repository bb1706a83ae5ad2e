/** What is wrong with a table, and where; all of it is told at once. */
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
  /** As spreadsheets number them: the head line is 1. */
  row: number;
  /** Name of the column as the file has it; empty where a whole line is meant. */
  column: string;
  /** Where it would stand in the record. */
  pointer: string;
  sentence: string;
  remedy: string;
}
