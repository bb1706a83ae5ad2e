/** One page of the static site. */
export interface Page {
  /** Where it lies under the root of the site. */
  path: string;
  title: string;
  /** What stands under the title. */
  html: string;
}

export function pageHtml({ title, html }: Page): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<link rel="stylesheet" href="/assets/page.css">
</head>
<body>
<main class="document">
<h1>${title}</h1>
${html}
</main>
</body>
</html>
`;
}
