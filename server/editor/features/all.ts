import { codeActions } from './code-actions';
import { codeLens } from './code-lens';
import { completion } from './completion';
import { definition } from './definition';
import { documentLinks } from './document-links';
import { documentSymbols } from './document-symbols';
import type { Feature } from './feature';
import { folding } from './folding';
import { formatting } from './formatting';
import { highlight } from './highlight';
import { hover } from './hover';
import { inlayHints } from './inlay-hints';
import { references } from './references';
import { rename } from './rename';
import { requests } from './requests';
import { selectionRanges } from './selection-ranges';
import { semanticTokens } from './semantic-tokens';
import { sheet } from './sheet';
import { signatureHelp } from './signature-help';
import { workspaceSymbols } from './workspace-symbols';

/** Every feature that the server offers; a new one is a file beside this one and a line here. */
export const features: readonly Feature[] = [
  codeActions,
  hover,
  completion,
  signatureHelp,
  inlayHints,
  documentSymbols,
  workspaceSymbols,
  formatting,
  semanticTokens,
  definition,
  references,
  highlight,
  rename,
  folding,
  selectionRanges,
  documentLinks,
  codeLens,
  sheet,
  requests,
];
