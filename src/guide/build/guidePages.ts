import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { tsImport } from 'tsx/esm/api';
import type { Plugin } from 'vite';
import { PICTURE, setPage } from './setPage.ts';
import { sizeOfPicture } from './sizeOfPicture.ts';

/** The facts come from the code that works with them, loaded here, so that the app need not carry it for the guide. */
const factsLoader = async (): Promise<(html: string) => string> =>
  ((await tsImport('../filled.ts', import.meta.url)) as typeof import('../filled.ts')).filled;

/** Lets the app import a page of the guide, written in Markdown, as the markup that it comes to, facts in place. */
export function guidePages(): Plugin {
  let loading: ReturnType<typeof factsLoader> | null = null;
  return {
    name: 'guide-pages',
    enforce: 'pre',
    async transform(markdown, file) {
      if (!file.endsWith('.md')) return null;
      const at = (path: string): string => join(dirname(file), path);
      const {
        pictures,
        links: _,
        ...page
      } = setPage(basename(file, '.md'), markdown, (path) => {
        this.addWatchFile(at(path));
        return sizeOfPicture(path, readFileSync(at(path)));
      });
      loading ??= factsLoader();
      const filled = await loading;
      const imports = pictures.map((path, i) => `import picture${i} from '${path}?url&no-inline';`);
      const html = pictures.reduce(
        (text, _path, i) => text.replace(PICTURE(i), `\${picture${i}}`),
        filled(page.html).replace(/[`\\$]/g, '\\$&'),
      );
      const code = [
        ...imports,
        `export const page = { ...${JSON.stringify({ ...page, html: '' })}, html: \`${html}\` };`,
      ].join('\n');
      return { code, map: null };
    },
  };
}
