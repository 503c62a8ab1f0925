export interface ClauseEdit {
  readonly slot: string;
  readonly was: string;
  readonly by: string;
  readonly text: string;
}
