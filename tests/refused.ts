/** What a call refused, for tests of limits. */
import { expect } from "vitest";

/** The field an InputError names and the value it was given; undefined where the call went through. */
export function refusedWith(call: () => unknown): readonly [parameter: string, value: unknown] | undefined {
  try {
    call();
    return undefined;
  } catch (error) {
    const { name, parameter, value } = error as { name: string; parameter: string; value: unknown };
    expect(name).toBe("InputError");
    return [parameter, value];
  }
}

/** The field an InputError names; undefined where the call went through. */
export function refused(call: () => unknown): string | undefined {
  return refusedWith(call)?.[0];
}
