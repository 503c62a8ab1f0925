/** The page around a procedure. It loads nothing; its one script swaps the content in and shows the step at the cursor. */
export function previewPage(): string {
  const nonce = crypto.randomUUID().replaceAll('-', '');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'nonce-${nonce}'">
<style>${style}</style>
</head>
<body>
<main></main>
<p id="empty" hidden>There is no plan with steps in this file.</p>
<script nonce="${nonce}">${script}</script>
</body>
</html>`;
}

const style = `
body { color: var(--vscode-editor-foreground); background: var(--vscode-editor-background); padding: 0 1.5em 3em; line-height: 1.45; }
main { max-width: 52em; margin: 0 auto; }
[data-line].at-cursor { outline: 1px solid var(--vscode-focusBorder); outline-offset: 3px; }
#empty { color: var(--vscode-descriptionForeground); text-align: center; margin-top: 4em; }
`;

// Content arrives as a fragment. Scripts in a fragment do not run, and the policy above forbids all but this one.
const script = `
const editor = acquireVsCodeApi();
const main = document.querySelector('main');
const empty = document.getElementById('empty');

function stepAt(line) {
  let found;
  for (const element of main.querySelectorAll('[data-line]')) {
    const own = Number(element.dataset.line);
    if (own <= line && (!found || own >= Number(found.dataset.line))) found = element;
  }
  return found;
}

function reveal(line) {
  main.querySelector('.at-cursor')?.classList.remove('at-cursor');
  const step = stepAt(line);
  if (!step) return;
  step.classList.add('at-cursor');
  const { top, bottom } = step.getBoundingClientRect();
  if (bottom < 0 || top > innerHeight) step.scrollIntoView({ block: 'center' });
}

addEventListener('message', ({ data }) => {
  if (typeof data.html === 'string') {
    const { scrollX, scrollY } = window;
    main.innerHTML = data.html;
    empty.hidden = data.html !== '';
    scrollTo(scrollX, scrollY);
  }
  if (typeof data.reveal === 'number') reveal(data.reveal);
});

main.addEventListener('dblclick', ({ target }) => {
  const step = target.closest('[data-line]');
  if (step) editor.postMessage({ line: Number(step.dataset.line) });
});

editor.postMessage({ ready: true });
`;
