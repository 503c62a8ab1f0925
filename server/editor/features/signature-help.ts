import { MarkupKind } from 'vscode-languageserver';
import type { Token } from '../../../grammar/tree';
import { expect } from '../../engine/plan/expect';
import { formText } from '../../engine/plan/form-text';
import type { Form } from '../../engine/plan/vocabulary';
import { vocabulary } from '../../engine/vocabulary';
import { askedAt } from '../asking';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** While terms are typed: the form of the word, with the term at the cursor marked. */
export const signatureHelp: Feature = {
  name: 'signature help',
  capabilities: { signatureHelpProvider: { triggerCharacters: [' ', ','] } },
  register(connection, session, log) {
    connection.onSignatureHelp(
      guarded(log, 'signature help', null, ({ textDocument, position }) => {
        const asked = askedAt(session, textDocument.uri, position);
        const placed = asked?.look.chain.at(-1);
        if (asked === undefined || placed === undefined || placed.bound.item !== asked.look.path.at(-1)?.item)
          return null;
        const { bound, at } = placed;
        const { word, item } = bound;
        const within = asked.offset - at;
        const brace = item.head.find((token) => token.kind === 'open');
        if (
          word === null ||
          item.word === null ||
          within <= item.word.at + item.word.text.length ||
          (brace && within > brace.at)
        )
          return null;
        const form = formText(word);
        if (form.parts.length === 0) return null;
        const before = item.terms.filter((token) => token.at + token.text.length <= within);
        const slot =
          slotAt(bound.spans, within) ??
          next(
            word.form,
            before,
            before.some((token) => token.at + token.text.length === within),
          );
        const active = form.parts.findIndex((part) => part.name === slot);
        return {
          signatures: [
            {
              label: form.text,
              documentation: { kind: MarkupKind.Markdown, value: word.meaning },
              parameters: form.parts.map((part) => ({
                label: [part.from, part.to] as [number, number],
                documentation: part.slot.meaning,
              })),
            },
          ],
          activeSignature: 0,
          ...(active >= 0 ? { activeParameter: active } : { activeParameter: form.parts.length }),
        };
      }),
    );
  },
};

const slotAt = (spans: Readonly<Record<string, { from: number; to: number }>>, within: number): string | undefined =>
  Object.entries(spans).find(([, span]) => span.from <= within && within <= span.to)?.[0];

/** The slot that is being written, or comes next; `touches`: the last term goes on. */
function next(form: Form, tokens: readonly Token[], touches: boolean): string | undefined {
  const { awaiting, unitOf, open, last } = expect(form, vocabulary.common, tokens);
  return (awaiting ?? unitOf ?? (touches ? last : undefined) ?? open[0])?.name;
}
