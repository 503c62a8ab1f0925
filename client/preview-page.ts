/** The page around a procedure. It loads nothing; its one script swaps the content in and shows the step at the cursor. */
export function previewPage(): string {
  const nonce = crypto.randomUUID().replaceAll('-', '');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'nonce-${nonce}'">
<style>${style}</style>
<style id="style"></style>
</head>
<body class="sheet">
<main></main>
<p id="empty" hidden>There is no plan with steps in this file.</p>
<script nonce="${nonce}">${script}</script>
</body>
</html>`;
}

// What the page shows while there is no sheet; the sheet brings its own style, which takes the theme's colours.
const style = `
body { color: var(--vscode-editor-foreground); background: var(--vscode-editor-background); }
#empty { color: var(--vscode-descriptionForeground); text-align: center; margin-top: 4em; }
`;

// Content arrives as a fragment. Scripts in a fragment do not run, and the policy above forbids all but this one.
const script = `
const editor = acquireVsCodeApi();
const main = document.querySelector('main');
const style = document.getElementById('style');
const empty = document.getElementById('empty');

// Lines of the editor count from zero, those that the sheet names from one.
function stepAt({ line, opens }) {
  let before;
  let behind;
  for (const element of main.querySelectorAll('[data-line]')) {
    const own = Number(element.dataset.line) - 1;
    if (own <= line && (!before || own >= Number(before.dataset.line) - 1)) before = element;
    if (own >= line && (!behind || own < Number(behind.dataset.line) - 1)) behind = element;
  }
  return opens ? (behind ?? before) : before;
}

function reveal(place) {
  for (const marked of main.querySelectorAll('.current')) marked.classList.remove('current');
  const step = stepAt(place);
  if (!step) return;
  step.classList.add('current');
  const { top, bottom } = step.getBoundingClientRect();
  if (bottom < 24 || top > innerHeight - 24) step.scrollIntoView({ block: 'center' });
}

addEventListener('message', ({ data }) => {
  if (typeof data.html === 'string') {
    // A page that was hidden begins anew and goes back to where it was.
    const y = main.firstChild ? scrollY : (editor.getState()?.y ?? 0);
    if (style.textContent !== data.style) style.textContent = data.style;
    main.innerHTML = data.html;
    empty.hidden = data.html !== '';
    scrollTo(scrollX, y);
  }
  if (data.reveal) reveal(data.reveal);
});

addEventListener('scroll', () => editor.setState({ y: scrollY }), { passive: true });

main.addEventListener('dblclick', ({ target }) => {
  const step = target.closest('[data-line]');
  if (step) editor.postMessage({ line: Number(step.dataset.line) - 1 });
});

editor.postMessage({ ready: true });
`;
