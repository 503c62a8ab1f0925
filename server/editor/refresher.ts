import type { Connection } from 'vscode-languageserver';
import type { Session } from './session';

/** Milliseconds after the last change before other documents are asked to look again. */
const pause = 300;

/**
 * Tells the client that what it shows beside the text (hints, lenses, colours) may have changed for a reason that it
 * cannot see: closed files came in, or a standard changed that an open plan follows.
 */
export class Refresher {
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly connection: Connection,
    private readonly session: Session,
  ) {}

  soon(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.now(), pause);
  }

  now(): void {
    const { inlayHint, codeLens } = this.session.client.workspace ?? {};
    const { languages } = this.connection;
    // A client that goes away meanwhile does not answer; that harms nobody.
    if (inlayHint?.refreshSupport) languages.inlayHint.refresh().catch(() => {});
    if (codeLens?.refreshSupport) this.connection.sendRequest('workspace/codeLens/refresh').catch(() => {});
  }

  stop(): void {
    clearTimeout(this.timer);
  }
}
