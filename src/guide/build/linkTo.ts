/**
 * Where a link leads in the app. `site.md#hold` and `#hold` lead to a place in the guide, `app:bench/back` to a screen.
 * Others are left as they are.
 */
export function linkTo(page: string, href: string): string {
  const app = /^app:(.+)$/.exec(href);
  if (app) return `#${app[1]}`;
  const guide = /^(?:(\w+)\.md)?(?:#([\w-]+))?$/.exec(href);
  if (!guide) return href;
  const [, other = page, section] = guide;
  return `#guide/${other}${section ? `/${section}` : ''}`;
}
