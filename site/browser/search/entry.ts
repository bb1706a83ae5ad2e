/** A place of the site that can be found. */
export interface SearchEntry {
  /** Its address. */
  id: string;
  title: string;
  /** Title of the page that it stands on. */
  page: string;
  text: string;
}
