// Serves VS Code for the browser with no server behind it, as vscode.dev is:
// the web files inside the code-server package, unpacked and not installed.
import { readdir, readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, relative } from 'node:path';
import { cache, settings } from './workbench.mjs';

const vscode = join(cache, 'node_modules/code-server/lib/vscode');
const types = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
};

/**
 * Serves the workbench with one unpacked extension. `tests` is a file inside that extension.
 * The workspace folder is in memory, filled from the folder `files`; `open` is the file to show.
 */
export async function startWebServer({ extension, tests, files, open, more = {} }) {
  const roots = {
    '/vscode/node_modules/': join(cache, 'node_modules'),
    '/vscode/': vscode,
    '/extension/': extension,
    '/fill/': join(import.meta.dirname, 'fill'),
  };
  const listing = JSON.stringify({ files: await readFolder(files), open });
  let page;

  const server = createServer(async (request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url, 'http://localhost').pathname));
    try {
      const root = Object.keys(roots).find((prefix) => path.startsWith(prefix));
      let body =
        path === '/'
          ? page
          : path === '/files.json'
            ? listing
            : root
              ? await readFile(join(roots[root], path.slice(root.length)))
              : undefined;
      if (body === undefined) throw new Error('not found');
      if (path.endsWith('/workbench.js')) body = withoutRemote(body.toString());
      response
        .writeHead(200, {
          'content-type': path === '/' ? 'text/html' : (types[extname(path)] ?? 'application/octet-stream'),
          'access-control-allow-origin': '*',
          'service-worker-allowed': '/',
        })
        .end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(0, '127.0.0.1', done));

  const authority = `127.0.0.1:${server.address().port}`;
  const uri = (path) => ({ scheme: 'http', authority, path });
  const configuration = {
    folderUri: { scheme: 'tmp', path: '/folder' },
    enableWorkspaceTrust: false,
    // code-server's own additions to the page ask for these.
    userDataPath: '/',
    isEnabledFileDownloads: true,
    isEnabledFileUploads: true,
    isEnabledCoderGettingStarted: false,
    webviewEndpoint: `http://${authority}/vscode/out/vs/workbench/contrib/webview/browser/pre`,
    configurationDefaults: { ...settings, ...more },
    developmentOptions: {
      enableSmokeTestDriver: true,
      extensions: [uri('/extension'), uri('/fill')],
      ...(tests ? { extensionTestsPath: uri(`/extension/${tests}`) } : {}),
    },
    productConfiguration: { ...JSON.parse(await readFile(join(vscode, 'product.json'))), extensionsGallery: undefined },
  };
  const fill = {
    WORKBENCH_WEB_CONFIGURATION: JSON.stringify(configuration).replaceAll('&', '&amp;').replaceAll('"', '&quot;'),
    WORKBENCH_WEB_BASE_URL: '/vscode',
    WORKBENCH_NLS_FALLBACK_URL: '/vscode/out/nls.messages.js',
    WORKBENCH_NLS_URL: '/vscode/out/nls.messages.js',
  };
  const template = await readFile(join(vscode, 'out/vs/code/browser/workbench/workbench.html'), 'utf8');
  page = template.replace(/\{\{(\w+)\}\}/g, (_, name) => fill[name] ?? '');

  return {
    url: `http://${authority}/`,
    stop: () =>
      new Promise((done) => {
        server.close(done);
        server.closeAllConnections();
      }),
  };
}

/** Undoes code-server's two changes that tie the page to a server; the rest is plain VS Code for the browser. */
function withoutRemote(script) {
  const changes = [
    [/remoteAuthority:location\.host\}/, '}'],
    [/(\.file\(this\.userDataPath\)\.with\(\{scheme:\w+\.)vscodeRemote/, '$1vscodeUserData'],
  ];
  return changes.reduce((text, [found, put]) => {
    if (!found.test(text)) throw new Error(`This version of the page has no ${found}`);
    return text.replace(found, put);
  }, script);
}

/** The text of every file in a folder, by its path in it. */
async function readFolder(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return Object.fromEntries(
    await Promise.all(files.map(async (file) => [relative(folder, file), await readFile(file, 'utf8')])),
  );
}
