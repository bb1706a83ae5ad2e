/** Entry of the search index. */
export interface SearchEntry {
  /** Address of the entry. */
  id: string;
  title: string;
  /** Title of its page. */
  page: string;
  text: string;
}
