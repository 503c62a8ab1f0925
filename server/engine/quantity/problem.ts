/** Why a text is no quantity, or not the one that its place asks for. */
export interface LiteralProblem {
  readonly problem:
    | 'no-unit'
    | 'unknown-unit'
    | 'mixed-units'
    | 'backward-range'
    | 'not-a-number'
    | 'wrong-kind'
    | 'impossible'
    | 'ambiguous-reference';
  readonly message: string;
  /** Whole literals that could stand in its place, the likeliest first. */
  readonly suggestions: readonly string[];
}

export const isProblem = (value: unknown): value is LiteralProblem =>
  typeof value === 'object' && value !== null && 'problem' in value;

export const problem = (
  name: LiteralProblem['problem'],
  message: string,
  suggestions: readonly string[] = [],
): LiteralProblem => ({ problem: name, message, suggestions });
